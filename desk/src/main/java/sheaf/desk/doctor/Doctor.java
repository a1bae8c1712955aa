package sheaf.desk.doctor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import sheaf.desk.intake.PageSource;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.report.Text;
import sheaf.desk.store.Store;
import sheaf.desk.store.StorePlace;

/** Looks at everything that Sheaf needs, one thing after the other. */
public final class Doctor {

  /** The oldest Java that will do. */
  private static final int JAVA = 17;

  /** Less room than for some thousand scans. */
  private static final long LITTLE_ROOM = 2_000_000_000L;

  /** After so long a backup is worth reminding of. */
  private static final Duration OLD = Duration.ofDays(8);

  /** A print that is off by more makes the reader say so. */
  private static final double MOST_OFF = 0.005;

  /** Readings that tell how the printer prints now. */
  private static final int RECENT = 60;

  private Doctor() {}

  /** Which Java runs. */
  public static Finding java() {
    Runtime.Version version = Runtime.version();
    String words = version.feature() + " (" + System.getProperty("java.vendor") + ")";
    return version.feature() >= JAVA
        ? Finding.well("Java", words)
        : Finding.ill("Java", words + ": install Java 17 or later.");
  }

  /** Whether a sheet that was drawn in memory can be read back: typeface, codes and natives. */
  public static Finding printAndRead(PageSource source) {
    return SelfTest.run(source);
  }

  /** Whether there is room where everything is kept. */
  public static Finding disk(Path home) {
    Path there = home;
    while (there != null && !Files.exists(there)) {
      there = there.getParent();
    }
    try {
      long room = Files.getFileStore(there).getUsableSpace();
      String words = gigabytes(room) + " free at " + home;
      return room < LITTLE_ROOM
          ? Finding.look("Disk", words + ": make room, or move the folder and name it by --home.")
          : Finding.well("Disk", words);
    } catch (IOException e) {
      return Finding.ill("Disk", home + " cannot be looked at: " + Trouble.inWords(e) + ".");
    }
  }

  private static String gigabytes(long bytes) {
    return String.format(Locale.ROOT, "%.1f GB", bytes / 1e9);
  }

  /** Whether the store opens. */
  public static Finding store(StorePlace place, Clock clock) {
    try (Store store = Store.openExisting(place, clock).orElse(null)) {
      if (store == null) {
        return Finding.look("Store", "none yet; the first 'sheaf read' makes one.");
      }
      return Finding.well(
          "Store", Text.count(store.count(), "job") + "; 'sheaf verify' looks at every scan");
    } catch (Trouble e) {
      return Finding.ill("Store", e.getMessage());
    }
  }

  /** When everything was copied last. */
  public static Finding backup(StorePlace place, Clock clock) {
    try (Store store = Store.openExisting(place, clock).orElse(null)) {
      Optional<Instant> last = store == null ? Optional.empty() : store.archives().lastBackup();
      if (store == null || store.count() == 0) {
        return Finding.well("Backup", "nothing to copy yet");
      }
      if (last.isEmpty()) {
        return Finding.look("Backup", "never made: sheaf backup FILE, onto another disk.");
      }
      String day = last.get().atZone(clock.getZone()).toLocalDate().toString();
      return last.get().plus(OLD).isBefore(clock.instant())
          ? Finding.look("Backup", "last on " + day + ": make a new one with sheaf backup FILE.")
          : Finding.well("Backup", "last on " + day);
    } catch (Trouble e) {
      return Finding.look("Backup", "not known while the store cannot be opened.");
    }
  }

  /** Whether a folder that scanners use can be worked with. */
  public static Finding folder(Path folder) {
    if (!Files.isDirectory(folder)) {
      return Finding.ill("Scan folder", folder + " is not there: make it, or name another.");
    }
    try {
      // Moving files away needs the right to write; only trying tells it for sure.
      Files.delete(Files.createTempFile(folder, ".sheaf", ".tmp"));
      return Finding.well("Scan folder", folder + " can be read and written");
    } catch (IOException e) {
      return Finding.ill(
          "Scan folder",
          folder + " cannot be written (" + Trouble.inWords(e) + "): give this user the right to.");
    }
  }

  /** At which size sheets come out of the printer, by those that were read last. */
  public static Finding printer(StorePlace place, Clock clock) {
    try (Store store = Store.openExisting(place, clock).orElse(null)) {
      OptionalDouble scale =
          store == null
              ? OptionalDouble.empty()
              : store.lastReadings(RECENT).stream()
                  .flatMap(page -> page.printScale().stream())
                  .mapToDouble(print -> print.mean())
                  .average();
      if (scale.isEmpty()) {
        return Finding.look(
            "Printer", "not known yet: print 'sheaf print scale-page' and lay a steel rule on it.");
      }
      double size = scale.getAsDouble();
      String words =
          String.format(Locale.ROOT, "sheets come out at %.1f %% of their size", size * 100);
      return Math.abs(size - 1) > MOST_OFF
          ? Finding.look("Printer", words + ": choose 'actual size' or 100 % when printing.")
          : Finding.well("Printer", words);
    } catch (Trouble e) {
      return Finding.look("Printer", "not known while the store cannot be opened.");
    }
  }

  /** Whether the profile makes sense. */
  public static Finding profile(List<String> problems) {
    return problems.isEmpty()
        ? Finding.well("Shop profile", "makes sense")
        : Finding.ill("Shop profile", String.join(" ", problems));
  }
}
