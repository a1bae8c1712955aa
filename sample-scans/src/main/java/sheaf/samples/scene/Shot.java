package sheaf.samples.scene;

import sheaf.core.layout.Aim;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.Head;

/**
 * One arrow that went through a sheet.
 *
 * @param axis of the shaft, in millimetres on the page as designed
 * @param head on the arrow
 * @param blades of the head, 0 for a field point
 * @param cut cutting diameter in true millimetres, 0 for a field point
 * @param aim the dot it was shot at
 * @param opening centroid of the hole's opening, on the page as designed; what a plain centroid
 *     gives
 */
public record Shot(MmPoint axis, Head head, int blades, double cut, Aim aim, MmPoint opening) {}
