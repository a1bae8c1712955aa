/** Files taken in whole and files written whole or not at all. */
package sheaf.desk.file;
