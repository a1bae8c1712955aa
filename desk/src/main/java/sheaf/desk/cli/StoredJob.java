package sheaf.desk.cli;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import sheaf.core.job.JobId;
import sheaf.core.job.RecordKey;
import sheaf.core.record.BowRecord;
import sheaf.core.record.RecordOfSheets;
import sheaf.core.result.JobSummary;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.store.ImportedRecord;
import sheaf.desk.store.Store;
import sheaf.desk.store.StorePlace;

/**
 * A job as the store knows it.
 *
 * @param summary what its papers say
 * @param imported the last record that came with a card, whether it counts or not
 * @param importCounts whether that record came after the last sheet was read
 * @param record what counts: the imported record, or the one that the papers make
 * @param key opens the record: a secret
 */
record StoredJob(
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
  static StoredJob find(JobId job, StorePlace place, Clock clock) {
    return Store.openExisting(place, clock)
        .flatMap(
            existing -> {
              try (Store store = existing) {
                return find(job, store, clock);
              }
            })
        .orElseThrow(() -> unknown(job));
  }

  /**
   * The open store of a job; the caller closes it.
   *
   * @throws Trouble a misuse when nothing of the job has been taken in, and when its record came
   *     with a card after its sheets were read
   */
  static Store store(JobId job, StorePlace place, Clock clock) {
    Store store = Store.openExisting(place, clock).orElseThrow(() -> unknown(job));
    try {
      if (find(job, store, clock).orElseThrow(() -> unknown(job)).importCounts()) {
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

  /** Looks a job up in an open store; empty when nothing of it has been taken in. */
  static Optional<StoredJob> find(JobId job, Store store, Clock clock) {
    return store
        .recordKey(job)
        .map(
            key -> {
              JobSummary summary = JobSummary.of(job, store.readings(job), store.answers(job));
              Optional<ImportedRecord> imported = store.imported(job);
              boolean counts =
                  imported.isPresent()
                      && store
                          .lastRead(job)
                          .filter(read -> read.isAfter(imported.get().at()))
                          .isEmpty();
              Optional<LocalDate> day =
                  store.opened(job).map(at -> LocalDate.ofInstant(at, clock.getZone()));
              BowRecord record = counts ? imported.get().record() : RecordOfSheets.of(summary, day);
              return new StoredJob(summary, imported, counts, record, key);
            });
  }

  private static Trouble unknown(JobId job) {
    return Trouble.misuse(
        "Job " + job + " is not known: none of its sheets has been read with 'sheaf read'.");
  }
}
