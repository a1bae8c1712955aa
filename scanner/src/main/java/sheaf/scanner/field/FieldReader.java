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
import sheaf.core.reading.InBox;
import sheaf.core.reading.NumberJudge;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.sheet.FlatSheet;

/** Reads what a person filled in: ticks, and numbers written a digit a box. */
public final class FieldReader {

  /** Less ink than this in a tick box is dust or a stray touch; a thin stroke covers 6 %. */
  private static final double EMPTY = 0.02;

  /** From this on it is a tick. */
  private static final double TICKED = 0.045;

  /**
   * As full as this, a box was filled, or scribbled over to take a tick back: a cross of the
   * thickest pen covers 58 %, a scribble of the thinnest 80 %.
   */
  private static final double FULL = 0.65;

  /** A tick that was taken back has at least so many times the ink of the one that counts. */
  private static final double TAKEN_BACK = 1.6;

  /**
   * Who fills a box stays in it and inks at most a tenth of its surroundings; who scribbles over it
   * inks a quarter and more.
   */
  private static final double SPRAWL = 0.15;

  /** How near a hole must be, edge to edge, to throw doubt on a box, in millimetres. */
  private static final double NEAR_HOLE = 1;

  private final Layout layout;

  /** Share of each tick box that is ink. */
  private final Map<MmRect, Double> ink;

  /** Share of the surroundings of each full tick box that is ink. */
  private final Map<MmRect, Double> around;

  /** What each digit box shows. */
  private final Map<MmRect, InBox> digits;

  private final double sure;

  private FieldReader(
      Layout layout,
      Map<MmRect, Double> ink,
      Map<MmRect, Double> around,
      Map<MmRect, InBox> digits,
      double sure) {
    this.layout = layout;
    this.ink = ink;
    this.around = around;
    this.digits = digits;
    this.sure = sure;
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

  /**
   * Looks at all boxes of a layout.
   *
   * @param sure numbers at least this sure need nobody's look, 0 to 1
   */
  public static FieldReader measure(FlatSheet sheet, Layout layout, double sure) {
    Map<MmRect, Double> ink = new HashMap<>();
    List<MmRect> digits = new ArrayList<>();
    for (Field field : layout.fields()) {
      if (field instanceof Field.Choice choice) {
        choice.boxes().forEach(box -> ink.put(box, BoxInk.share(sheet, box)));
      } else {
        digits.addAll(field.boxes());
      }
    }
    Map<MmRect, Double> around = new HashMap<>();
    ink.forEach(
        (box, share) -> {
          if (share >= FULL) {
            around.put(box, BoxInk.around(sheet, box));
          }
        });
    return new FieldReader(layout, ink, around, DigitBoxes.read(sheet, digits), sure);
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
    return judge.fields();
  }

  /** Judges field after field. */
  private final class Judge {
    private final List<MmRect> torn;
    private final Map<String, FieldReading> readings = new HashMap<>();
    private final NumberJudge numbers = new NumberJudge(sure);
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
      leaveOutTakenBack(ticked);
      if (ticked.size() == 1 && sprawls(ticked.get(0).box())) {
        confidence = 0.5;
        doubts.add(
            Reason.at(
                ReasonCode.TICK_UNSURE,
                "Is the box \"%s\" at \"%s\" ticked, or scribbled out?"
                    .formatted(ticked.get(0).value(), choice.label()),
                ticked.get(0).box().centre()));
      }
      if (ticked.size() > 1) {
        confidence = 0.5;
        doubts.add(twoTicks(choice, ticked));
      }
      readings.put(choice.key(), reading(choice, ticked, confidence));
    }

    /** Of two ticks the one counts that was not scribbled over. */
    private void leaveOutTakenBack(List<Field.Option> ticked) {
      if (ticked.size() == 2) {
        double least = ticked.stream().mapToDouble(option -> ink.get(option.box())).min().orElse(0);
        ticked.removeIf(
            option -> sprawls(option.box()) && ink.get(option.box()) > TAKEN_BACK * least);
      }
    }

    private boolean sprawls(MmRect box) {
      return around.getOrDefault(box, 0.0) >= SPRAWL;
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
      List<InBox> boxes = new ArrayList<>();
      for (MmRect box : number.boxes()) {
        InBox shown = digits.get(box);
        boolean hidden = isTorn(box) && !(shown instanceof InBox.Blank);
        boxes.add(hidden ? new InBox.Unclear() : shown);
      }
      numbers.add(number, boxes);
    }

    /** All readings in the layout's order. */
    private Fields fields() {
      NumberJudge.Numbers judged = numbers.judge();
      judged.readings().forEach(reading -> readings.put(reading.key(), reading));
      doubts.addAll(judged.doubts());
      return new Fields(
          layout.fields().stream().map(field -> readings.get(field.key())).toList(), doubts);
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
