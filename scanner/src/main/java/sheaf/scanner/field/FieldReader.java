package sheaf.scanner.field;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.sheet.FlatSheet;

/** Reads what a person filled in: ticks now; a handwritten number is shown to be there. */
public final class FieldReader {

  /** Less ink than this in a tick box is dust or a stray touch; a thin stroke covers 6 %. */
  private static final double EMPTY = 0.02;

  /** From this on it is a tick. */
  private static final double TICKED = 0.045;

  /** Ink in a digit box from which it counts as written in; a thin 1 covers 4 %. */
  private static final double WRITTEN = 0.02;

  /** How near a hole must be, edge to edge, to throw doubt on a box, in millimetres. */
  private static final double NEAR_HOLE = 1;

  private final Layout layout;

  /** Share of each box that is ink. */
  private final Map<MmRect, Double> ink;

  private FieldReader(Layout layout, Map<MmRect, Double> ink) {
    this.layout = layout;
    this.ink = ink;
  }

  /**
   * What the fields of a sheet say.
   *
   * @param readings one for each field of the layout, in its order
   * @param doubts what a person must look at
   */
  public record Fields(List<FieldReading> readings, List<Reason> doubts) {
    /** Copies the lists. */
    public Fields {
      readings = List.copyOf(readings);
      doubts = List.copyOf(doubts);
    }
  }

  /** Measures the ink in all boxes of a layout. */
  public static FieldReader measure(FlatSheet sheet, Layout layout) {
    Map<MmRect, Double> ink = new HashMap<>();
    layout.boxes().forEach(box -> ink.put(box, BoxInk.share(sheet, box)));
    return new FieldReader(layout, ink);
  }

  /**
   * Reads all fields.
   *
   * @param torn where paper is torn, and ink cannot be told from a tear
   */
  public Fields read(List<MmRect> torn) {
    Judge judge = new Judge(torn);
    for (Field field : layout.fields()) {
      if (field instanceof Field.Choice choice) {
        judge.choice(choice);
      } else if (field instanceof Field.Number number) {
        judge.number(number);
      }
    }
    return new Fields(judge.readings, judge.doubts);
  }

  /** Judges field after field. */
  private final class Judge {
    private final List<MmRect> torn;
    private final List<FieldReading> readings = new ArrayList<>();
    private final List<Reason> doubts = new ArrayList<>();

    Judge(List<MmRect> torn) {
      this.torn = torn;
    }

    private void choice(Field.Choice choice) {
      // A slit through a box explains its ink where another is surely ticked.
      boolean sure = choice.options().stream().anyMatch(this::surelyTicked);
      List<Field.Option> ticked = new ArrayList<>();
      double confidence = 1;
      for (Field.Option option : choice.options()) {
        double share = ink.get(option.box());
        if (sure && isTorn(option.box())) {
          continue;
        }
        boolean unsure = share > EMPTY && (share < TICKED || isTorn(option.box()));
        if (unsure) {
          confidence = 0.5;
          doubts.add(
              Reason.at(
                  ReasonCode.TICK_UNSURE,
                  "Is the box \"%s\" at \"%s\" ticked?".formatted(option.value(), choice.label()),
                  option.box().centre()));
        }
        if (share > EMPTY) {
          ticked.add(option);
        }
      }
      if (ticked.size() > 1) {
        confidence = 0.5;
        doubts.add(twoTicks(choice, ticked));
      }
      readings.add(reading(choice, ticked, confidence));
    }

    private static Reason twoTicks(Field.Choice choice, List<Field.Option> ticked) {
      List<String> values = ticked.stream().map(option -> "\"" + option.value() + "\"").toList();
      MmPoint place = ticked.get(0).box().centre();
      return Reason.at(
          ReasonCode.TWO_TICKS,
          "At \"%s\" more than one box is ticked: %s. Which one is meant?"
              .formatted(choice.label(), String.join(", ", values)),
          place);
    }

    private static FieldReading reading(
        Field.Choice choice, List<Field.Option> ticked, double confidence) {
      if (ticked.isEmpty()) {
        return blank(choice.key(), confidence);
      }
      String text = ticked.get(0).value();
      boolean sure = confidence == 1;
      boolean one = ticked.size() == 1;
      return new FieldReading(
          choice.key(),
          sure ? State.READ : State.CHECK,
          one ? text : "",
          one ? number(text) : OptionalDouble.empty(),
          one ? choice.unit() : Optional.empty(),
          confidence);
    }

    private void number(Field.Number number) {
      boolean written = number.digits().stream().anyMatch(digit -> ink.get(digit.box()) > WRITTEN);
      if (!written) {
        readings.add(blank(number.key(), 1));
        return;
      }
      doubts.add(
          Reason.at(
              ReasonCode.WRITTEN_NUMBER,
              "A number is written at \"%s\": a person must read it.".formatted(number.label()),
              number.digits().get(0).box().centre()));
      readings.add(
          new FieldReading(
              number.key(), State.CHECK, "", OptionalDouble.empty(), number.unit(), 0));
    }

    private boolean surelyTicked(Field.Option option) {
      return ink.get(option.box()) >= TICKED && !isTorn(option.box());
    }

    private static FieldReading blank(String key, double confidence) {
      return new FieldReading(
          key, State.BLANK, "", OptionalDouble.empty(), Optional.empty(), confidence);
    }

    private static OptionalDouble number(String text) {
      return text.matches("\\d+")
          ? OptionalDouble.of(Double.parseDouble(text))
          : OptionalDouble.empty();
    }

    private boolean isTorn(MmRect box) {
      return torn.stream().anyMatch(hole -> hole.grow(NEAR_HOLE).overlaps(box));
    }
  }
}
