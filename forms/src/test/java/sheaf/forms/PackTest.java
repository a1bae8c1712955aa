package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.BowType;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;

class PackTest {

  @Test
  void aPackIsABenchCardFrontAndBackAndTheTargetsOfATune() {
    List<SheetCode> sheets = Pack.sheets(Jobs.JOB, Paper.A4, UnitSystem.METRIC);

    assertThat(sheets)
        .extracting(sheet -> sheet.number() + " " + sheet.layout().code())
        .containsExactly(
            "1 BFAM1", "2 BBAM1", "3 T4AM1", "4 T4AM1", "5 LEAM1", "6 P2AM1", "7 P2AM1");
    assertThat(sheets).allMatch(sheet -> sheet.job().equals(Jobs.JOB));
  }

  @Test
  void onLargePaperTheCardStaysSmall() {
    List<SheetCode> sheets = Pack.sheets(Jobs.JOB, Paper.TABLOID, UnitSystem.INCHES);

    assertThat(sheets)
        .extracting(sheet -> sheet.layout().paper())
        .startsWith(Paper.LETTER, Paper.LETTER, Paper.TABLOID)
        .endsWith(Paper.TABLOID);
  }

  @Test
  void aRecurvesPackHasItsOwnCard() {
    assertThat(Pack.usual(BowType.RECURVE))
        .startsWith(Variant.RECURVE_FRONT, Variant.RECURVE_BACK, Variant.FOUR_ZONES);
  }
}
