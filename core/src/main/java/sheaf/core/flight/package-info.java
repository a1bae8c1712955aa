/**
 * Where an arrow goes once it has left the bow: {@link sheaf.core.flight.Flight} with the drag of
 * {@link sheaf.core.flight.FlyingArrow} in {@link sheaf.core.flight.Air}, {@link
 * sheaf.core.flight.AimedShot} for what that means behind a sight, and {@link
 * sheaf.core.flight.SightMarks} for its marks. SI units within; each name says its unit.
 */
package sheaf.core.flight;
