/**
 * A folder that scanners drop files into: {@link sheaf.desk.watch.ScanFolder} takes in those that
 * are complete by their own structure ({@link sheaf.desk.watch.FileEnd}), {@link
 * sheaf.desk.watch.Readers} read what waits.
 */
package sheaf.desk.watch;
