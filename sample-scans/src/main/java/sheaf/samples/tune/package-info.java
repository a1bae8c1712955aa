/**
 * Bows that exist in numbers only, tuned by the plan of {@link sheaf.core.tune.Planner} and by a
 * rule of thumb: {@link sheaf.samples.tune.TuningStudy} says how many sheets each needs.
 */
package sheaf.samples.tune;
