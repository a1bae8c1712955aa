package sheaf.desk.cli;

import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import sheaf.core.layout.BowType;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;
import sheaf.core.tune.BowSetup;
import sheaf.desk.work.Printable;
import sheaf.forms.CardForm;
import sheaf.forms.Sides;

/** Options with a few words to choose from: what a word means, and the words for completion. */
abstract class Choices<T> implements ITypeConverter<T>, Iterable<String> {

  private final List<T> all;
  private final Function<T, String> label;

  private Choices(List<T> all, Function<T, String> label) {
    this.all = all;
    this.label = label;
  }

  @Override
  public T convert(String word) {
    return all.stream()
        .filter(one -> label.apply(one).equals(word.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "'" + word + "' is none of " + String.join(", ", words())));
  }

  private List<String> words() {
    return all.stream().map(label).toList();
  }

  @Override
  public Iterator<String> iterator() {
    return words().iterator();
  }

  /** What to print. */
  static final class OfPrintable extends Choices<Printable> {
    OfPrintable() {
      super(List.of(Printable.values()), Printable::label);
    }
  }

  /** How many dots a pair sheet has. */
  static final class OfDots extends Choices<Variant> {
    OfDots() {
      super(
          List.of(Variant.TWO_DOTS, Variant.SHARED_DOT),
          variant -> variant == Variant.TWO_DOTS ? "two" : "one");
    }
  }

  /** Whose card. */
  static final class OfBowType extends Choices<BowType> {
    OfBowType() {
      super(List.of(BowType.values()), BowType::label);
    }
  }

  /** How many sides of a leaf are printed. */
  static final class OfSides extends Choices<Sides> {
    OfSides() {
      super(List.of(Sides.BOTH, Sides.ONE), sides -> sides.name().toLowerCase(Locale.ROOT));
    }
  }

  /** What a finished card is for. */
  static final class OfCardForm extends Choices<CardForm> {
    OfCardForm() {
      super(List.of(CardForm.values()), CardForm::label);
    }
  }

  /** How a compound's cams are held. */
  static final class OfCables extends Choices<BowSetup.Cables> {
    OfCables() {
      super(List.of(BowSetup.Cables.values()), BowSetup.Cables::label);
    }
  }

  /** The paper in the printer. */
  static final class OfPaper extends Choices<Paper> {
    OfPaper() {
      super(List.of(Paper.values()), Paper::label);
    }
  }

  /** The units that a sheet asks for. */
  static final class OfUnits extends Choices<UnitSystem> {
    OfUnits() {
      super(List.of(UnitSystem.values()), UnitSystem::label);
    }
  }
}
