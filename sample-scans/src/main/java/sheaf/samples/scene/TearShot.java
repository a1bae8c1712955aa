package sheaf.samples.scene;

import sheaf.core.page.MmPoint;

/**
 * One arrow that tore a zone of a tear sheet.
 *
 * @param zone that it was shot at
 * @param point where the shaft's axis went in, on the page as designed
 * @param tail where the vanes passed, on the page as designed; the point itself for a bullet hole
 * @param vanes on the arrow, 3 or 4
 */
public record TearShot(int zone, MmPoint point, MmPoint tail, int vanes) {}
