package sheaf.desk.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.NoSuchFileException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.reading.PageReading;
import sheaf.desk.json.PageJson;
import sheaf.desk.json.RecordJson;

/**
 * What was found when everything in a store was looked at.
 *
 * @param files how many files are kept
 * @param bytes how many bytes they have
 * @param readings how many readings there are
 * @param faults what is wrong, a sentence each; empty for a sound store
 */
public record Verification(int files, long bytes, int readings, List<String> faults) {

  /** More faults than a person would read are not gathered. */
  private static final int MOST_FAULTS = 100;

  /** Copies the list. */
  public Verification {
    faults = List.copyOf(faults);
  }

  /** Whether nothing is wrong. */
  public boolean isSound() {
    return faults.isEmpty();
  }

  /** Looks at everything on a connection that sees one moment. */
  static Verification of(
      Engine engine, Connection snapshot, Originals originals, LongConsumer progress)
      throws SQLException {
    return new Work(snapshot, originals, progress).run(engine);
  }

  /** A look in progress. */
  private static final class Work {

    private final Connection snapshot;
    private final Originals originals;
    private final LongConsumer progress;
    private final List<String> faults = new ArrayList<>();
    private int files;
    private long bytes;
    private int readings;

    Work(Connection snapshot, Originals originals, LongConsumer progress) {
      this.snapshot = snapshot;
      this.originals = originals;
      this.progress = progress;
    }

    Verification run(Engine engine) throws SQLException {
      engine.faults(snapshot).forEach(fault -> add("The database is damaged: " + fault + "."));
      Sql.each(
          snapshot,
          "SELECT readings.id, job, sheet, reading FROM readings",
          row -> reading(row.getLong(1), row.getString(2), row.getString(4)));
      Sql.each(
          snapshot,
          "SELECT id, job, record FROM records",
          row -> record(row.getLong(1), row.getString(2), row.getString(3)));
      Sql.each(
          snapshot,
          "SELECT sha256, name, bytes FROM originals ORDER BY sha256",
          row -> file(row.getString(1), row.getString(2), row.getLong(3)));
      return new Verification(files, bytes, readings, faults);
    }

    private void add(String fault) {
      if (faults.size() < MOST_FAULTS) {
        faults.add(fault);
      }
    }

    private void reading(long id, String job, String text) {
      readings++;
      try {
        PageReading page = PageJson.parse(text);
        Optional<String> named = page.sheet().map(SheetCode::job).map(JobId::text);
        if (!named.equals(Optional.ofNullable(job))) {
          add("Reading " + id + " is filed under another job than the one on its page.");
        }
      } catch (IllegalArgumentException e) {
        add("Reading " + id + " cannot be understood: " + e.getMessage() + ".");
      }
    }

    private void record(long id, String job, String text) {
      try {
        if (!RecordJson.parse(text).last().job().text().equals(job)) {
          add("Record " + id + " is filed under another job than its own.");
        }
      } catch (IllegalArgumentException e) {
        add("Record " + id + " cannot be understood: " + e.getMessage() + ".");
      }
    }

    private void file(String digest, String name, long length) throws SQLException {
      files++;
      String what = "The scan " + name + " (" + digest.substring(0, 12) + ") ";
      long before = bytes;
      try (InputStream in = originals.open(digest)) {
        String found = Originals.digest(in, more -> bytes += more);
        progress.accept(bytes);
        if (bytes - before != length || !found.equals(digest)) {
          add(what + "is not what was kept.");
        }
      } catch (NoSuchFileException e) {
        add(what + "is gone.");
      } catch (IOException e) {
        add(what + "cannot be read: " + e.getMessage() + ".");
      }
    }
  }
}
