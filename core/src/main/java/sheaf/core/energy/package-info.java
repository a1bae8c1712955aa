/**
 * What arrow and bow come to in numbers: {@link sheaf.core.energy.ArrowNumbers} for a flying arrow,
 * {@link sheaf.core.energy.Balance} for where its weight lies, {@link sheaf.core.energy.DrawCurve}
 * for the energy that a bow stores, {@link sheaf.core.energy.RatedSpeed} for speeds that can be
 * compared. {@link sheaf.core.energy.BowNumbers} takes them from a record.
 */
package sheaf.core.energy;
