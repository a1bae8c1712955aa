/**
 * Reads scans and photos of sheets: {@link sheaf.scanner.SheetReader} takes a file's bytes and
 * hands over a reading for each page.
 */
package sheaf.scanner;
