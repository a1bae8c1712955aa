/** OpenCV's native side: loading it, and giving its memory back. */
package sheaf.scanner.opencv;
