package sheaf.scanner.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

class ProofLegendTest {

  private static final Reason SCALE = Reason.of(ReasonCode.PRINT_SCALE, "Printed at 96 %.");
  private static final Reason HEAD = at(ReasonCode.HEAD_UNSURE, "Which head?", 80);
  private static final Reason CENTRE = at(ReasonCode.CENTRE_UNSURE, "Is its centre right?", 90);

  private static Reason at(ReasonCode code, String words, double x) {
    return Reason.at(code, words, new MmPoint(x, 100));
  }

  private static ProofLegend legend(List<Reason> reasons) {
    return ProofLegend.of(Proofs.LAYOUT, Proofs.pair(reasons));
  }

  @Test
  void aDoubtHasTheSameNumberOnTheSheetAndInTheLegend() {
    ProofLegend legend = legend(List.of(HEAD, CENTRE));

    assertThat(legend.entries())
        .containsExactly(
            new ProofLegend.Entry(OptionalInt.of(1), "Which head?"),
            new ProofLegend.Entry(OptionalInt.of(2), "Is its centre right?"));
    assertThat(legend.doubts())
        .containsExactly(
            new ProofMark.Doubt(new MmPoint(80, 100), 1),
            new ProofMark.Doubt(new MmPoint(90, 100), 2));
  }

  @Test
  void whatHasNoPlaceHasNoNumber() {
    ProofLegend legend = legend(List.of(SCALE, HEAD));

    assertThat(legend.entries())
        .extracting(ProofLegend.Entry::number)
        .containsExactly(OptionalInt.empty(), OptionalInt.of(1));
  }

  @Test
  void manyDoubtsOfOneSortShareANumberAndALine() {
    List<Reason> reasons = new ArrayList<>(List.of(HEAD));
    for (int i = 0; i < 12; i++) {
      reasons.add(at(ReasonCode.WRITTEN_NUMBER, "Number " + i + ": read it.", 20 + i));
    }
    ProofLegend legend = legend(reasons);

    assertThat(legend.entries())
        .extracting(ProofLegend.Entry::text)
        .containsExactly("Which head?", "Number 0: read it. The same at 11 more places.");
    assertThat(legend.doubts()).hasSize(13).filteredOn(d -> d.number() == 2).hasSize(12);
  }

  @Test
  void theHeadingSaysHowItEndedWhatItIsAndWhatWasFound() {
    ProofLegend legend = legend(List.of(HEAD));

    assertThat(legend.ending()).isEqualTo("CHECK");
    assertThat(legend.heading())
        .containsExactly(
            "Pair sheet, sheet 2 of job " + Proofs.CODE.job().spoken(),
            "Found: 1 field point, 1 broadhead, 1 ticked box");
  }

  @Test
  void theKeyExplainsOnlyWhatIsDrawn() {
    assertThat(legend(List.of()).key()).noneMatch(line -> line.startsWith("Dashed"));
    assertThat(legend(List.of(HEAD)).key())
        .anyMatch(line -> line.startsWith("Dashed"))
        .anyMatch(line -> line.startsWith("Frame"))
        .anyMatch(line -> line.startsWith("Ring and cross"))
        .anyMatch(line -> line.startsWith("Dotted"));
  }
}
