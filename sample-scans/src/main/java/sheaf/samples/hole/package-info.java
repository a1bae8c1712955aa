/** Holes that arrows tear into paper: their shape, and how they are painted. */
package sheaf.samples.hole;
