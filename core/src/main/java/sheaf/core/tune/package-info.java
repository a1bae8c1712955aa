/**
 * How this bow answers to what is moved on it, and what to move next.
 *
 * <p>Start at {@link sheaf.core.tune.Planner#plan}: from a visit's pair sheets, the changes made
 * between them and its tears it makes the next step. {@link sheaf.core.tune.BowModel} is what is
 * known of the bow, {@link sheaf.core.tune.ShopPrior} what earlier bows taught, and {@link
 * sheaf.core.tune.BowSetup} says which parts there are to move. All offsets are broadheads minus
 * field points, x to the right, y down, told at one distance; those of other distances are taken to
 * be the same angle.
 */
package sheaf.core.tune;
