package sheaf.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.desk.Pages;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.store.Store;
import sheaf.desk.store.StorePlace;

/** Record pages for a web host. */
class PublishingTest {

  private static final LocalDate DAY = LocalDate.of(2026, 9, 14);

  @TempDir private Path folder;
  private Path site;

  @BeforeEach
  void aJob() {
    site = folder.resolve("site");
    try (Store store = store()) {
      store.file("a.png", new byte[] {1}, List.of(Pages.pair(Pages.JOB, 4, 0, 5)), "test");
    }
  }

  private Store store() {
    return Store.open(StorePlace.in(new HomeFolder(folder.resolve("home"))), DeskUnderTest.CLOCK);
  }

  private Publishing.Done publish() {
    try (Store store = store()) {
      return Publishing.into(site, store, DeskUnderTest.profile(), DAY);
    }
  }

  private String key() {
    try (Store store = store()) {
      return store.recordKey(Pages.JOB).orElseThrow().text();
    }
  }

  @Test
  void everyRecordLiesUnderItsKeyWithItsCard() throws Exception {
    assertThat(publish()).isEqualTo(new Publishing.Done(1, 1, 0));

    assertThat(Files.readString(site.resolve(key()).resolve("index.html")))
        .contains(Pages.JOB.spoken(), "noindex", "no-referrer", "../record.css", "Never dry fire");
    assertThat(Files.readAllBytes(site.resolve(key()).resolve("card.pdf")))
        .startsWith('%', 'P', 'D', 'F');
    assertThat(Files.readString(site.resolve("index.html"))).doesNotContain(key());
  }

  @Test
  void whatDidNotChangeIsLeftAlone() throws Exception {
    publish();
    FileTime longAgo = FileTime.fromMillis(0);
    Path page = site.resolve(key()).resolve("index.html");
    Files.setLastModifiedTime(page, longAgo);

    assertThat(publish()).isEqualTo(new Publishing.Done(1, 0, 0));
    assertThat(Files.getLastModifiedTime(page)).isEqualTo(longAgo);
  }

  @Test
  void whatChangedIsWrittenAnew() {
    publish();
    try (Store store = store()) {
      store.file("b.png", new byte[] {2}, List.of(Pages.pair(Pages.JOB, 5, 9, 5)), "test");
    }
    assertThat(publish()).isEqualTo(new Publishing.Done(1, 1, 0));
  }

  @Test
  void replacedAddressIsTakenAwayAndNothingElse() throws Exception {
    publish();
    Path old = site.resolve(key());
    Path strange = Files.createDirectory(site.resolve("photos"));
    try (Store store = store()) {
      store.newRecordKey(Pages.JOB, "test");
    }

    assertThat(publish()).isEqualTo(new Publishing.Done(1, 1, 1));
    assertThat(old).doesNotExist();
    assertThat(site.resolve(key())).isDirectory();
    assertThat(strange).exists();
  }
}
