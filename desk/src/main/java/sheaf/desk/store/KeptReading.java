package sheaf.desk.store;

import sheaf.core.answer.ReadAt;

/**
 * A reading of a page that is kept.
 *
 * @param original the digest of the file that it was read from
 * @param number the page within the file, from 1
 * @param read what was read, and when
 */
public record KeptReading(String original, int number, ReadAt read) {}
