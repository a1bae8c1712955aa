/**
 * Groups of shots and what can honestly be said of them with few arrows.
 *
 * <p>Start at {@link sheaf.core.group.Offset#between}: how far one group's centre lies from
 * another's, with the region that the true offset lies in; {@link sheaf.core.group.Equivalence}
 * then says whether that is close enough. {@link sheaf.core.group.Drift} tells how impact moves
 * with distance, {@link sheaf.core.group.Spread} how widely a group scatters, and {@link
 * sheaf.core.group.Flyer} which shot stands out. Everything is in millimetres on the target, x to
 * the right, y down.
 */
package sheaf.core.group;
