/** Rectangles of numbers, and the noise that makes paper look like paper. */
package sheaf.samples.raster;
