/**
 * What a page said, how sure that is, and why it could not be read. Made by the scanner, kept by
 * the desk, computed on by {@link sheaf.core.result}.
 */
package sheaf.core.reading;
