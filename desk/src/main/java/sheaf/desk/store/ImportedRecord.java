package sheaf.desk.store;

import java.time.Instant;
import sheaf.core.record.BowRecord;

/**
 * A record that a finished card carried.
 *
 * @param record the record
 * @param at when it was imported
 * @param file the card's file, without folders
 */
public record ImportedRecord(BowRecord record, Instant at, String file) {}
