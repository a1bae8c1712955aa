/** Takes in scanned files: reads them, keeps them, writes proof pictures. */
package sheaf.desk.intake;
