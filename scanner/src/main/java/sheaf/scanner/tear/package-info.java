/** Tears in the zones of a tear sheet: where the point went in and where the vanes passed. */
package sheaf.scanner.tear;
