/**
 * From a file's bytes to pictures: the one place where files are recognised, headers checked,
 * pixels decoded and the camera's orientation applied.
 */
package sheaf.scanner.picture;
