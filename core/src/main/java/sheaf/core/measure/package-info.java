/**
 * Quantities with their units: {@link sheaf.core.measure.Unit} is the entry point. Conversions are
 * exact; only a result that cannot be written as a {@code double} is rounded, once.
 */
package sheaf.core.measure;
