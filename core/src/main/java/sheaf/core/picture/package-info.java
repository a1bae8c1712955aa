/**
 * Pictures of what was shot, as shapes in millimetres: {@link sheaf.core.picture.PairPicture} and
 * its siblings say what is to be seen and where, and whoever shows it, on paper or on a screen,
 * only paints the shapes.
 */
package sheaf.core.picture;
