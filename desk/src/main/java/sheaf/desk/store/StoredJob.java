package sheaf.desk.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import sheaf.core.job.JobId;
import sheaf.core.job.RecordKey;
import sheaf.core.record.BowRecord;
import sheaf.core.record.RecordOfSheets;
import sheaf.core.result.JobSummary;
import sheaf.desk.outcome.Trouble;

/**
 * A job as the store knows it.
 *
 * @param summary what its papers say
 * @param imported the last record that came with a card, whether it counts or not
 * @param importCounts whether that record came after the last sheet was read
 * @param record what counts: the imported record, or the one that the papers make
 * @param key opens the record: a secret
 */
public record StoredJob(
    JobSummary summary,
    Optional<ImportedRecord> imported,
    boolean importCounts,
    BowRecord record,
    RecordKey key) {

  /**
   * Looks a job up.
   *
   * @throws Trouble a misuse when nothing of it has been taken in
   */
  public static StoredJob find(JobId job, StorePlace place, Clock clock) {
    return Store.openExisting(place, clock)
        .flatMap(
            existing -> {
              try (Store store = existing) {
                return store.job(job);
              }
            })
        .orElseThrow(() -> unknown(job));
  }

  /**
   * The open store of a job; the caller closes it.
   *
   * @throws Trouble a misuse when nothing of the job has been taken in, and a refusal when its
   *     record came with a card after its sheets were read
   */
  public static Store toAnswer(JobId job, StorePlace place, Clock clock) {
    Store store = Store.openExisting(place, clock).orElseThrow(() -> unknown(job));
    try {
      if (store.job(job).orElseThrow(() -> unknown(job)).importCounts()) {
        throw Trouble.refused(
            "Of job %s the record of an imported card counts, which is told as it is: read the job's sheets again to change anything."
                .formatted(job));
      }
      return store;
    } catch (Trouble e) {
      store.close();
      throw e;
    }
  }

  /** Looks a job up on an open connection; empty when nothing of it has been taken in. */
  static Optional<StoredJob> find(JobId job, Connection connection, ZoneId zone)
      throws SQLException {
    Optional<RecordKey> key = Shelf.recordKey(connection, job);
    if (key.isEmpty()) {
      return Optional.empty();
    }
    JobSummary summary =
        JobSummary.of(job, Shelf.readings(connection, job), Shelf.answers(connection, job));
    Optional<ImportedRecord> imported = Shelf.imported(connection, job);
    Optional<Instant> lastRead = Shelf.lastRead(connection, job);
    boolean counts =
        imported.isPresent()
            && lastRead.filter(read -> read.isAfter(imported.get().at())).isEmpty();
    Optional<LocalDate> day =
        Shelf.opened(connection, job).map(at -> LocalDate.ofInstant(at, zone));
    BowRecord record = counts ? imported.get().record() : RecordOfSheets.of(summary, day);
    return Optional.of(new StoredJob(summary, imported, counts, record, key.get()));
  }

  private static Trouble unknown(JobId job) {
    return Trouble.misuse(
        "Job " + job + " is not known: none of its sheets has been read with 'sheaf read'.");
  }
}
