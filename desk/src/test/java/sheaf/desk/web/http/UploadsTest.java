package sheaf.desk.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names of files as senders give them. */
class UploadsTest {

  @ParameterizedTest
  @CsvSource({
    "IMG_2041.jpg, IMG_2041.jpg",
    "../../etc/passwd, passwd",
    "C:\\Users\\x\\scan 3.pdf, scan 3.pdf",
    ".htaccess, htaccess",
    "photo<script>.jpg, photo_script_.jpg",
    "'', picture"
  })
  void onlyTheHarmlessEndOfANameIsKept(String sent, String kept) {
    assertThat(Uploads.harmless(sent)).isEqualTo(kept);
  }

  @Property(tries = 300)
  void noNameHoldsAnythingThatLeadsElsewhere(@ForAll String sent) {
    assertThat(Uploads.harmless(sent))
        .isNotEmpty()
        .hasSizeLessThanOrEqualTo(100)
        .doesNotContain("/", "\\", "..", "<", ">", "\"", "&", "\n", "\0");
  }
}
