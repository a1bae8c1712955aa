/** Sheets as people leave them: printed, written on, shot, and what is known of them. */
package sheaf.samples.scene;
