package sheaf.core.layout;

import sheaf.core.page.MmPoint;

/**
 * A dot to aim at.
 *
 * @param aim which heads are shot at it
 * @param centre where to aim
 * @param radius of all its ink, in millimetres
 */
public record AimDot(Aim aim, MmPoint centre, double radius) {}
