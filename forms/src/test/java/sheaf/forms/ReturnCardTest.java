package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;

class ReturnCardTest {

  @Test
  void aReturnCardShowsTheLastValuesAndADashForTheOthers() throws IOException {
    Layout front = Layouts.current(Variant.RETURN_FRONT, Paper.LETTER, UnitSystem.INCHES);
    Layout back = Layouts.current(Variant.RETURN_BACK, Paper.LETTER, UnitSystem.INCHES);
    List<SheetCode> card =
        List.of(new SheetCode(Jobs.JOB, 1, front.id()), new SheetCode(Jobs.JOB, 2, back.id()));
    Map<String, String> last =
        Map.of("draw_length_left", "29 6/16 in", "arrow_spine", "340", "unknown_left", "7");

    String text =
        Pdf.of(out -> BlankSheets.write(card, Sides.BOTH, SheetValues.last(last), out)).text();

    assertThat(text).contains("29 6/16 in", "last: 340", "\u2013").doesNotContain("{", "unknown");
  }

  @Test
  void aLastValueThatIsLongerThanItsPlaceIsRefusedRatherThanPrintedTooSmall() {
    Layout front = Layouts.current(Variant.RETURN_FRONT, Paper.LETTER, UnitSystem.INCHES);
    Map<String, String> last = Map.of("draw_length_left", "about twenty-nine and a half inches");

    assertThatThrownBy(
            () ->
                BlankSheets.write(
                    List.of(code(front)),
                    Sides.ONE,
                    SheetValues.last(last),
                    OutputStream.nullOutputStream()))
        .hasMessageContaining("about twenty-nine");
  }

  private static SheetCode code(Layout layout) {
    return new SheetCode(Jobs.JOB, 999, layout.id());
  }
}
