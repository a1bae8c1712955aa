/** Scanners and cameras, and the files they write. */
package sheaf.samples.scan;
