/**
 * From readings to results: one pair sheet's, line sheet's or group sheet's, one job's, and the
 * sentences that say them.
 */
package sheaf.core.result;
