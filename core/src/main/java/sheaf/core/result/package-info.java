/** From readings to results: one pair sheet's, one job's, and the sentence that says it. */
package sheaf.core.result;
