/** Handwritten digits in printed boxes: an open set of them, and how the recogniser learns them. */
package sheaf.samples.digit;
