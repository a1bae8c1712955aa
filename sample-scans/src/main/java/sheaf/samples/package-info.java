/**
 * Makes scans and photos of sheets whose truth is known, holds the committed ones, and measures how
 * well they are read.
 */
package sheaf.samples;
