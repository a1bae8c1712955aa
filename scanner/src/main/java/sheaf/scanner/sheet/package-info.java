/**
 * From a picture to a flat sheet: register marks, geometry, codes, print scale. {@link
 * sheaf.scanner.sheet.SheetInPicture} is the way in.
 */
package sheaf.scanner.sheet;
