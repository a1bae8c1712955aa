/** Finds holes, fits the shaft's circle to each, and tells heads by their slits. */
package sheaf.scanner.hole;
