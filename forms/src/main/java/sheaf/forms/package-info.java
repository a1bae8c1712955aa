/** Everything that is printed: blank sheets, packs of them, the backing and finished cards. */
package sheaf.forms;
