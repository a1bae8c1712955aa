package sheaf.desk.doctor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.desk.Pages;
import sheaf.desk.doctor.Finding.Grade;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.store.Store;
import sheaf.desk.store.StorePlace;
import sheaf.scanner.ReadPage;
import sheaf.scanner.SheetReader;

class DoctorTest {

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-09-14T16:30:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;

  private StorePlace place() {
    return StorePlace.in(new HomeFolder(folder.resolve("home")));
  }

  private void file(double scale) {
    PageReading pair = Pages.pair(Pages.JOB, 2, 30, 12);
    PageReading page =
        new PageReading(
            pair.source(),
            pair.reasons(),
            pair.sheet(),
            pair.pixelsPerMm(),
            Optional.of(new PrintScale(scale, scale)),
            pair.holes(),
            pair.fields());
    try (Store store = Store.open(place(), CLOCK)) {
      store.file("a.jpg", new byte[] {1}, List.of(page), "0.1.0");
    }
  }

  @Test
  void javaThatRunsTheTestsWillDo() {
    assertThat(Doctor.java().grade()).isEqualTo(Grade.WELL);
  }

  @Test
  void sheetThatIsDrawnIsReadBack() {
    assertThat(Doctor.printAndRead(new SheetReader()::read).grade()).isEqualTo(Grade.WELL);
  }

  @Test
  void readerThatReadsNothingIsFoundOut() {
    Finding found =
        Doctor.printAndRead(
            (name, file, proof, pages) ->
                pages.accept(new ReadPage(Pages.refused(), Optional.empty())));
    assertThat(found.grade()).isEqualTo(Grade.ILL);
    assertThat(found.words()).contains("build Sheaf anew");
  }

  @Test
  void whereNothingWasReadThereIsNothingToMendButMuchToDo() {
    assertThat(Doctor.store(place(), CLOCK).words()).contains("'sheaf read' makes one");
    assertThat(Doctor.printer(place(), CLOCK).words()).contains("scale-page");
    assertThat(Doctor.backup(place(), CLOCK).grade()).isEqualTo(Grade.WELL);
    assertThat(folder.resolve("home")).doesNotExist();
  }

  @Test
  void printerThatShrinksIsFoundOut() {
    file(0.97);
    Finding found = Doctor.printer(place(), CLOCK);
    assertThat(found.grade()).isEqualTo(Grade.LOOK);
    assertThat(found.words())
        .isEqualTo(
            "sheets come out at 97.0 % of their size: choose 'actual size' or 100 % when printing.");
  }

  @Test
  void printerThatPrintsTrueIsWell() {
    file(1.001);
    assertThat(Doctor.printer(place(), CLOCK).grade()).isEqualTo(Grade.WELL);
  }

  @Test
  void backupThatIsMissingOrOldIsAskedFor() {
    file(1);
    assertThat(Doctor.backup(place(), CLOCK).words()).contains("never made: sheaf backup FILE");
    try (Store store = Store.open(place(), CLOCK)) {
      store.archives().backedUp();
    }
    assertThat(Doctor.backup(place(), CLOCK).grade()).isEqualTo(Grade.WELL);
    Clock later = Clock.fixed(CLOCK.instant().plusSeconds(86_400 * 20), ZoneOffset.UTC);
    assertThat(Doctor.backup(place(), later).words())
        .isEqualTo("last on 2026-09-14: make a new one with sheaf backup FILE.");
  }

  @Test
  void brokenStoreIsAFault() throws Exception {
    Files.createDirectories(folder.resolve("home"));
    Files.writeString(folder.resolve("home").resolve("sheaf.db"), "rubbish ".repeat(100));
    assertThat(Doctor.store(place(), CLOCK).grade()).isEqualTo(Grade.ILL);
  }

  @Test
  void folderOfTheScannerMustBeThere() {
    assertThat(Doctor.folder(folder).grade()).isEqualTo(Grade.WELL);
    assertThat(folder).isEmptyDirectory();
    assertThat(Doctor.folder(folder.resolve("no")).words()).contains("is not there: make it");
  }
}
