package sheaf.desk.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReasonCode;
import sheaf.core.result.JobSummary;
import sheaf.desk.Pages;

class PageTableTest {

  private static final List<PageReading> PAGES =
      List.of(
          Pages.benchCard(Pages.JOB, 1, "not sound").from("scans/monday.pdf#1"),
          Pages.pair(Pages.JOB, 2, 32.9, 12.3).from("scans/monday.pdf#2"),
          Pages.doubted(
                  Pages.pair(Pages.OTHER_JOB, 12, 2, -1).from("IMG_20260914_183512_portrait.jpg"),
                  ReasonCode.ARROWS_AGAINST_HOLES,
                  "4 broadheads are ticked as shot, but 3 holes were found: look whether two"
                      + " arrows went through one hole, or correct the tick.")
              .from("a/folder/IMG_20260914_183512_portrait.jpg"),
          Pages.refused());

  @ParameterizedTest
  @ValueSource(ints = {80, 120})
  void tableLooksLikeItsGoldenFile(int width) throws IOException {
    String table = PageTable.of(PAGES, width);
    String jobs =
        JobReport.of(JobSummary.of(Pages.JOB, PAGES), "", width)
            + "\n"
            + JobReport.of(JobSummary.of(Pages.OTHER_JOB, PAGES), "", width);
    assertThat(table + "\n" + jobs).isEqualTo(golden("pages-" + width + ".txt"));
    assertThat((table + jobs).lines()).allMatch(line -> line.length() <= width);
  }

  @Test
  void doubtOfSeveralPlacesIsSaidOnce() {
    PageReading once =
        Pages.doubted(Pages.pair(Pages.JOB, 1, 0, 0), ReasonCode.HOLE_UNSURE, "Is this a hole?");
    PageReading twice = Pages.doubted(once, ReasonCode.HOLE_UNSURE, "Is this a hole?");
    assertThat(PageTable.of(List.of(twice), 80))
        .contains("    - Is this a hole? [mm across, down: 100, 120; 100, 120]\n")
        .containsOnlyOnce("Is this a hole?");
  }

  @Test
  void withoutPagesThereIsNoTable() {
    assertThat(PageTable.of(List.of(), 80)).isEmpty();
  }

  private static String golden(String name) throws IOException {
    try (InputStream file = PageTableTest.class.getResourceAsStream(name)) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
