package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.UnitSystem;
import sheaf.core.page.Paper;

class PackTest {

  @Test
  void aPackIsABenchCardAndBothKindsOfPairSheet() {
    List<SheetCode> sheets = Pack.sheets(Jobs.JOB, Paper.A4, UnitSystem.METRIC);

    assertThat(sheets)
        .extracting(sheet -> sheet.number() + " " + sheet.layout().code())
        .containsExactly("1 BFAM1", "2 P2AM1", "3 P1AM1");
    assertThat(sheets).allMatch(sheet -> sheet.job().equals(Jobs.JOB));
  }
}
