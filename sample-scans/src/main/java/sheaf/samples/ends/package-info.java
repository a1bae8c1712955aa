/**
 * Teaches the net that tells the ends of tears; {@code sheaf.samples.ends.EndNetStudy} is the way
 * in.
 */
package sheaf.samples.ends;
