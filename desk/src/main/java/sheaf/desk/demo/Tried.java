package sheaf.desk.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sheaf.core.group.Offset;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.SheetKind;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.ReadingState;
import sheaf.core.result.PairResult;
import sheaf.samples.scene.Shot;
import sheaf.samples.scene.Truth;

/**
 * A sample that was read, beside what it was made with.
 *
 * @param name of its file
 * @param truth what it was made with
 * @param reading what was read
 */
public record Tried(String name, Truth truth, PageReading reading) {

  /** Whether the reading ended as it should. */
  public boolean asExpected() {
    return reading.state().label().equals(truth.expected());
  }

  /** Broadheads' centre minus field points' centre, as measured; in true millimetres. */
  public Optional<MmVector> measured() {
    return reading.state() == ReadingState.REFUSED ? Optional.empty() : offset(reading);
  }

  /** The same, as the sample was made. */
  public Optional<MmVector> made() {
    return SheetCode.parse(truth.code()).flatMap(code -> offset(perfect(code)));
  }

  private static Optional<MmVector> offset(PageReading page) {
    return page.sheet()
        .filter(sheet -> sheet.layout().kind() == SheetKind.PAIR)
        .flatMap(sheet -> PairResult.of(page).offset())
        .map(Offset::shift);
  }

  /** The reading that a reader without any error would give. */
  private PageReading perfect(SheetCode code) {
    List<Hole> holes = new ArrayList<>();
    for (Shot shot : truth.shots()) {
      holes.add(
          new Hole(
              shot.axis(),
              0,
              truth.shaft(),
              shot.head(),
              shot.blades(),
              shot.cut(),
              shot.aim(),
              1));
    }
    return new PageReading(
        name,
        List.of(),
        Optional.of(code),
        OptionalDouble.empty(),
        Optional.of(new PrintScale(truth.scaleX(), truth.scaleY())),
        holes,
        List.of());
  }
}
