/** What people filled in: ticks, and where a number is written. */
package sheaf.scanner.field;
