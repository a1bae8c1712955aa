package sheaf.scanner;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

class SheetReaderTest {

  @Test
  void aFaultOfTheReadersOwnRefusesThePageAndSaysWhere() {
    PageReading page =
        SheetReader.orRefused(
                "stack.pdf#3",
                () -> {
                  throw new IllegalStateException("impossible");
                })
            .reading();

    assertThat(page.source()).isEqualTo("stack.pdf#3");
    assertThat(page.reasons())
        .singleElement()
        .satisfies(
            reason -> {
              assertThat(reason.code()).isEqualTo(ReasonCode.READER_FAULT);
              assertThat(reason.message()).contains("IllegalStateException", "SheetReaderTest");
            });
  }

  @Test
  void whatIsNoPictureIsRefused() {
    List<PageReading> pages = new ArrayList<>();
    new SheetReader()
        .read(
            "notes.txt",
            "Dear all".getBytes(StandardCharsets.US_ASCII),
            SheetReader.Proof.SKIP,
            page -> pages.add(page.reading()));

    assertThat(pages)
        .singleElement()
        .extracting(page -> page.reasons().stream().map(Reason::code).toList())
        .isEqualTo(List.of(ReasonCode.NOT_A_PICTURE));
  }
}
