package sheaf.desk.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sheaf.core.job.JobId;
import sheaf.core.job.RecordKey;
import sheaf.desk.file.OutputFile;
import sheaf.desk.json.RecordJson;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;
import sheaf.desk.work.Cards;

/**
 * Writes all record pages into a folder for any web host: each under its key, with its card, and
 * nowhere a list of them. What did not change is left alone, and what is no longer to be seen is
 * taken away.
 */
public final class Publishing {

  /** Raised when pages of the same record would look otherwise than before. */
  private static final int FORM = 1;

  private static final String PAGE = "index.html";
  private static final String CARD = "card.pdf";
  private static final Pattern MADE_FROM =
      Pattern.compile("<meta name=\"made-from\" content=\"([0-9a-f]{64})\">");

  private final Path folder;
  private final ShopProfile profile;
  private final Look look;
  private final LocalDate today;
  private final Set<String> keys = new HashSet<>();
  private int written;
  private int removed;

  private Publishing(Path folder, ShopProfile profile, LocalDate today) {
    this.folder = folder;
    this.profile = profile;
    this.look = new Look(() -> profile, false);
    this.today = today;
  }

  /**
   * What was done.
   *
   * @param records that are in the folder now
   * @param written of them anew
   * @param removed records that are no longer to be seen
   */
  public record Done(int records, int written, int removed) {}

  /**
   * Brings a folder up to date.
   *
   * @param today stands on cards whose visit has no day
   * @throws Trouble when it cannot be written
   */
  public static Done into(Path folder, Store store, ShopProfile profile, LocalDate today) {
    Publishing publishing = new Publishing(folder, profile, today);
    OutputFile.folder(folder);
    publishing.common();
    for (JobId job : store.jobs(Integer.MAX_VALUE)) {
      store.job(job).ifPresent(publishing::record);
    }
    publishing.removeOthers();
    return new Done(publishing.keys.size(), publishing.written, publishing.removed);
  }

  private void common() {
    writeIfOther("record.css", Resources.content("desk.css"));
    writeIfOther("robots.txt", "User-agent: *\nDisallow: /\n".getBytes(UTF_8));
    // Hosts that list folders must not list this one: the names in it are the secrets.
    writeIfOther(PAGE, look.text("nothing", Map.of()).getBytes(UTF_8));
  }

  private void writeIfOther(String name, byte[] content) {
    Path file = folder.resolve(name);
    try {
      if (!Files.exists(file) || !Arrays.equals(Files.readAllBytes(file), content)) {
        OutputFile.write(file, out -> out.write(content));
      }
    } catch (IOException e) {
      throw Trouble.cannotRead(file, e);
    }
  }

  private void record(StoredJob job) {
    String key = job.key().text();
    keys.add(key);
    Path place = folder.resolve(key);
    String digest = digest(job);
    if (digest.equals(madeFrom(place.resolve(PAGE))) && Files.exists(place.resolve(CARD))) {
      return;
    }
    OutputFile.folder(place);
    LocalDate day = job.record().last().day().orElse(today);
    byte[] card = RecordPage.card(job, profile, day);
    byte[] page = RecordPage.html(job, profile, look, digest).getBytes(UTF_8);
    OutputFile.write(place.resolve(CARD), out -> out.write(card));
    // The page says what it is made from, so it comes last: whatever breaks off is made again.
    OutputFile.write(place.resolve(PAGE), out -> out.write(page));
    written++;
  }

  /** Of all that the page and the card show. */
  private String digest(StoredJob job) {
    String all =
        String.join(
            "\n",
            String.valueOf(FORM),
            job.key().text(),
            RecordJson.line(Cards.withoutPeople(job.record())),
            profile.shop().name().toString(),
            profile.shop().contact().toString(),
            profile.shop().logo().toString(),
            profile.paper().label(),
            profile.recordAddress().toString());
    return Digests.of(all.getBytes(UTF_8));
  }

  private static String madeFrom(Path page) {
    try {
      Matcher meta = MADE_FROM.matcher(Files.exists(page) ? Files.readString(page) : "");
      return meta.find() ? meta.group(1) : "";
    } catch (IOException e) {
      return "";
    }
  }

  /** Only what this wrote itself is ever taken away. */
  private void removeOthers() {
    for (Path place : records()) {
      if (!keys.contains(place.getFileName().toString())
          && !madeFrom(place.resolve(PAGE)).isEmpty()) {
        try {
          Files.deleteIfExists(place.resolve(CARD));
          Files.deleteIfExists(place.resolve(PAGE));
          Files.deleteIfExists(place);
          removed++;
        } catch (IOException e) {
          throw Trouble.cannotWrite(place, e);
        }
      }
    }
  }

  private List<Path> records() {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(Files::isDirectory).filter(Publishing::isRecord).toList();
    } catch (IOException e) {
      throw Trouble.cannotRead(folder, e);
    }
  }

  private static boolean isRecord(Path place) {
    try {
      return !new RecordKey(place.getFileName().toString()).text().isEmpty();
    } catch (IllegalArgumentException e) {
      return false;
    }
  }
}
