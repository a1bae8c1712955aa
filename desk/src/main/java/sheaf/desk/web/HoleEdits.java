package sheaf.desk.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import sheaf.core.answer.Said;
import sheaf.core.layout.Aim;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.Head;
import sheaf.desk.web.http.Refusal;
import sheaf.desk.web.http.Words;

/** What somebody did to the holes of a sheet, understood. */
final class HoleEdits {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Nobody does more to one sheet before keeping it. */
  private static final int MOST = 200;

  private HoleEdits() {}

  /**
   * Edits in the order in which they were made.
   *
   * @param json a list of {@code {"near":[x,y],"at":[x,y],"head":"field","aim":"shared"}}; without
   *     {@code at}, the hole near that place is none
   */
  static List<Said> ofScript(String json, Layout layout) {
    try {
      JsonNode all = MAPPER.readTree(json);
      if (!all.isArray() || all.size() > MOST) {
        throw damaged();
      }
      List<Said> edits = new ArrayList<>();
      for (JsonNode one : all) {
        edits.add(
            one.has("at")
                ? new Said.HoleAt(
                    place(one.get("near"), layout),
                    place(one.get("at"), layout),
                    head(one.path("head").asText()),
                    aim(one.path("aim").asText(), layout))
                : new Said.NoHole(place(one.get("near"), layout)));
      }
      return edits;
    } catch (JsonProcessingException e) {
      throw damaged();
    }
  }

  /** One edit, of a form: a hole at {@code x}, {@code y} with another head, or none. */
  static Said ofForm(Words form, Layout layout) {
    MmPoint place = place(number(form.get("x")), number(form.get("y")), layout);
    return form.get("head").equals("none")
        ? new Said.NoHole(place)
        : new Said.HoleAt(place, place, head(form.get("head")), aim(form.get("aim"), layout));
  }

  private static double number(String text) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw damaged();
    }
  }

  private static MmPoint place(JsonNode pair, Layout layout) {
    if (pair == null || pair.size() != 2) {
      throw damaged();
    }
    return place(pair.get(0).asDouble(Double.NaN), pair.get(1).asDouble(Double.NaN), layout);
  }

  private static MmPoint place(double x, double y, Layout layout) {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw damaged();
    }
    MmPoint place = new MmPoint(x, y);
    if (!layout.page().contains(place)) {
      throw new Refusal(400, "A hole lies beyond the edge of the sheet.");
    }
    return place;
  }

  private static Head head(String label) {
    return Arrays.stream(Head.values())
        .filter(head -> head.label().equals(label.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(HoleEdits::damaged);
  }

  private static Aim aim(String label, Layout layout) {
    return layout.dots().stream()
        .map(dot -> dot.aim())
        .filter(aim -> aim.label().equals(label))
        .findFirst()
        .or(() -> layout.dots().stream().map(dot -> dot.aim()).findFirst())
        .orElse(Aim.SHARED);
  }

  private static Refusal damaged() {
    return new Refusal(400, "What was changed is damaged: open the sheet again.");
  }
}
