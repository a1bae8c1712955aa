package sheaf.core.job;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheaf.core.layout.LayoutId;

/**
 * What the codes printed on a sheet say: which job, which sheet of it, and how it is laid out.
 *
 * <p>As text: job id, sheet number, layout, and a check character over all before it (ISO/IEC 7064
 * MOD 37-36), separated by dots, for example {@code 7G4KQ2M8XE0.4.P2LI1.C}. Nothing personal.
 *
 * @param job the job
 * @param number the sheet's number within the job, 1 to 999
 * @param layout the layout it was printed from
 */
public record SheetCode(JobId job, int number, LayoutId layout) {

  private static final int MAX_NUMBER = 999;
  private static final Pattern TEXT =
      Pattern.compile("([0-9A-Z]{11})\\.([1-9][0-9]{0,2})\\.([0-9A-Z]{5,7})\\.([0-9A-Z])");

  /** Throws when the number is out of range. */
  public SheetCode {
    if (number < 1 || number > MAX_NUMBER) {
      throw new IllegalArgumentException("a sheet's number must be 1 to 999, not " + number);
    }
  }

  /** The text inside the codes. */
  public String text() {
    String body = job.text() + "." + number + "." + layout.code();
    return body + "." + check(body);
  }

  /** Reads the text of a code; empty when it is not one of ours or was damaged. */
  public static Optional<SheetCode> parse(String text) {
    Matcher parts = TEXT.matcher(text);
    if (!parts.matches()) {
      return Optional.empty();
    }
    String body = text.substring(0, text.lastIndexOf('.'));
    if (check(body) != parts.group(4).charAt(0)) {
      return Optional.empty();
    }
    return JobId.parse(parts.group(1))
        .flatMap(
            job ->
                LayoutId.parse(parts.group(3))
                    .map(layout -> new SheetCode(job, Integer.parseInt(parts.group(2)), layout)));
  }

  private static char check(String body) {
    return CheckCharacter.of(body.replace(".", ""));
  }
}
