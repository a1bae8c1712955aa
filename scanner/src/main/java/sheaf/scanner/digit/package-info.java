/** Digits in printed boxes: taking the writing out of a box, and telling which digit it is. */
package sheaf.scanner.digit;
