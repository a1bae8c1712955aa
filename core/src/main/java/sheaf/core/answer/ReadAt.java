package sheaf.core.answer;

import java.time.Instant;
import sheaf.core.reading.PageReading;

/**
 * What a page said, and when it was read.
 *
 * @param page what it said
 * @param at when the machine read it
 */
public record ReadAt(PageReading page, Instant at) {}
