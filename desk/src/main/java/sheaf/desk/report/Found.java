package sheaf.desk.report;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.Head;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.TearReading;

/** What was found on a page, in a few words. */
public final class Found {

  private Found() {}

  /**
   * In words that fit a room, if there are such; the job's report tells the distance again.
   *
   * @param room in characters
   */
  public static String on(PageReading page, int room) {
    if (page.sheet().isEmpty() || page.state() == ReadingState.REFUSED) {
      return "";
    }
    return switch (page.sheet().get().layout().kind()) {
      case PAIR -> at(heads(page), page, room);
      case LINE, GROUP, SIGHT_IN -> at(Text.count(page.holes().size(), "hole"), page, room);
      case TEAR -> tears(page);
      default -> fields(page);
    };
  }

  private static String heads(PageReading page) {
    List<String> heads = new ArrayList<>();
    count(page, Head.FIELD, "field", heads);
    count(page, Head.BROADHEAD, "broadhead", heads);
    count(page, Head.UNKNOWN, "unsure", heads);
    return heads.isEmpty() ? "no holes" : String.join(" + ", heads);
  }

  private static String at(String holes, PageReading page, int room) {
    String at = page.field("distance").filter(f -> f.value().isPresent()).map(Found::at).orElse("");
    return holes.length() + at.length() <= room ? holes + at : holes;
  }

  private static void count(PageReading page, Head head, String word, List<String> heads) {
    long holes = page.holes().stream().filter(hole -> hole.head() == head).count();
    if (holes > 0) {
      heads.add(holes + " " + word);
    }
  }

  private static String at(FieldReading distance) {
    return ", " + distance.text() + distance.unit().map(unit -> " " + unit.symbol()).orElse("");
  }

  private static String tears(PageReading page) {
    long bullets = page.tears().stream().filter(TearReading::isBulletHole).count();
    List<String> words = new ArrayList<>();
    if (page.tears().size() > bullets) {
      words.add(Text.count((int) (page.tears().size() - bullets), "tear"));
    }
    if (bullets > 0) {
      words.add(Text.count((int) bullets, "bullet hole"));
    }
    return words.isEmpty() ? "no tears" : String.join(", ", words);
  }

  private static String fields(PageReading page) {
    long filled = page.fields().stream().filter(f -> f.state() != FieldReading.State.BLANK).count();
    return filled + " of " + page.fields().size() + " fields filled";
  }
}
