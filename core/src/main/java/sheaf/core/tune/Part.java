package sheaf.core.tune;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What is moved on a bow, by the words that sheets have boxes for. */
public enum Part {
  /** The arrow rest, or the plunger of a recurve. */
  REST,
  /** The nocking point, with its loop. */
  NOCKING,
  /** The split yoke: one leg twisted shorter, the other longer. Needs a press. */
  YOKE,
  /** The cams, by shims, spacers or hats on their axles. Needs a press. */
  CAMS,
  /** The sight, which moves both heads alike. */
  SIGHT,
  /** Something without a box of its own. */
  OTHER;

  /** The part that a sheet's word means; empty for words that no sheet has. */
  static Optional<Part> of(String word) {
    return Arrays.stream(values()).filter(part -> part.label().equals(word)).findFirst();
  }

  /** The word on sheets and in JSON. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What to call it in a sentence: {@code the rest}. */
  String spoken() {
    return switch (this) {
      case REST -> "the rest";
      case NOCKING -> "the nocking point";
      case YOKE -> "the yoke";
      case CAMS -> "the cams";
      case SIGHT -> "the sight";
      case OTHER -> "something else";
    };
  }

  /** Whether moving it moves broadheads and field points apart, or together. */
  boolean movesOffset() {
    return this != SIGHT;
  }
}
