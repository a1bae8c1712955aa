package sheaf.forms.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.core.record.RecordOfSheets;
import sheaf.core.record.Visit;
import sheaf.core.result.JobSummary;

class CardWordsTest {

  @Test
  void aLongListOfSheetsIsCutShort() {
    JobId job = JobId.random(new SplittableRandom(5));
    List<PageReading> pages = new ArrayList<>();
    for (int number = 1; number <= 15; number++) {
      Variant variant = number == 1 ? Variant.FRONT : Variant.TWO_DOTS;
      pages.add(doubtful(job, number, variant));
    }
    Visit summary = visit(JobSummary.of(job, pages));

    assertThat(CardWords.sheets(summary))
        .isEqualTo(
            "Sheets read: bench card no. 1;"
                + " pair sheets no. 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13 and 2 more.");
    assertThat(CardWords.doubts(summary).orElseThrow())
        .startsWith("Sheets 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12 and 3 more have doubts");
  }

  @Test
  void withoutDoubtsNothingIsSaidOfThem() {
    Visit none = visit(JobSummary.of(JobId.random(new SplittableRandom(5)), List.of()));

    assertThat(CardWords.doubts(none)).isEmpty();
    assertThat(CardWords.sheets(none)).isEqualTo("Sheets read: none.");
  }

  private static Visit visit(JobSummary job) {
    return RecordOfSheets.of(job, Optional.empty()).last();
  }

  private static PageReading doubtful(JobId job, int number, Variant variant) {
    LayoutId layout = Layouts.current(variant, Paper.A4, UnitSystem.METRIC).id();
    return new PageReading(
        "scan.jpg",
        List.of(Reason.of(ReasonCode.TICK_UNSURE, "one tick is unsure")),
        Optional.of(new SheetCode(job, number, layout)),
        OptionalDouble.empty(),
        Optional.empty(),
        List.of(),
        List.of());
  }

  @ParameterizedTest
  @CsvSource({
    "hit 1 3/8 in right, hit 1~3/8~in right",
    "at 20 yd: shown, at 20~yd: shown",
    "at 18 m. Within 25 mm of, at 18~m. Within 25~mm of",
    "with 95 % confidence, with 95~% confidence",
    "3 men in 2 inns, 3 men in 2 inns"
  })
  void aNumberStaysOnOneLineWithItsFractionAndItsUnit(String text, String bound) {
    assertThat(CardWords.bound(text)).isEqualTo(bound.replace('~', '\u00a0'));
  }
}
