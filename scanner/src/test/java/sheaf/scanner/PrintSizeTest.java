package sheaf.scanner;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

class PrintSizeTest {

  @Test
  void aTrueSizeNeedsNoWords() {
    assertThat(PrintSize.worthSaying(new PrintScale(1.003, 0.998))).isEmpty();
  }

  @Test
  void aSheetShrunkToFitIsSaidToBeCorrected() {
    Reason reason = PrintSize.worthSaying(new PrintScale(0.95, 0.951)).orElseThrow();

    assertThat(reason.code()).isEqualTo(ReasonCode.PRINT_SCALE);
    assertThat(reason.message()).contains("Print the next ones at 100 %");
  }

  @Test
  void aSheetStretchedOneWayIsAskedAboutWithBothSizes() {
    Reason reason = PrintSize.worthSaying(new PrintScale(0.95, 1)).orElseThrow();

    assertThat(reason.code()).isEqualTo(ReasonCode.SCALE_UNEVEN);
    assertThat(reason.message()).contains("95.0 % of its width", "100.0 % of its height");
  }
}
