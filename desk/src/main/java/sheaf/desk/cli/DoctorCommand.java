package sheaf.desk.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import sheaf.core.reading.NumberJudge;
import sheaf.desk.doctor.Doctor;
import sheaf.desk.doctor.Finding;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.report.Text;
import sheaf.desk.store.StorePlace;

/** {@code sheaf doctor}: look whether this computer has all that Sheaf needs. */
@Command(
    name = "doctor",
    header = "Look whether this computer has all that Sheaf needs.",
    footer = {
      "",
      "Examples:",
      "  sheaf doctor",
      "      Java, printing and reading, disk, store, backup, printer, profile",
      "  sheaf doctor /srv/scans",
      "      and the folder that the scanner uses",
      "",
      "Each line says what to do. Exit status: 0 all works, 1 something does not."
    })
final class DoctorCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(arity = "0..*", paramLabel = "DIR", description = "Folders that scanners use.")
  private List<Path> folders = new ArrayList<>();

  DoctorCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    List<String> problems = problems();
    boolean broken = false;
    broken |= tell(Doctor.java());
    broken |= tell(printAndRead());
    broken |= tell(Doctor.disk(sheaf.home().path()));
    broken |= tell(Doctor.profile(problems));
    if (problems.isEmpty()) {
      StorePlace place = sheaf.store();
      broken |= tell(Doctor.store(place, desk.clock()));
      broken |= tell(Doctor.backup(place, desk.clock()));
      broken |= tell(Doctor.printer(place, desk.clock()));
    }
    for (Path folder : folders.isEmpty() ? profiles(problems) : folders) {
      broken |= tell(Doctor.folder(folder));
    }
    desk.console().flush();
    return (broken ? ExitStatus.ENVIRONMENT : ExitStatus.OK).number();
  }

  private List<Path> profiles(List<String> problems) {
    return problems.isEmpty() ? sheaf.profile().scans().stream().toList() : List.of();
  }

  private List<String> problems() {
    try {
      sheaf.profile();
      return List.of();
    } catch (Trouble e) {
      return e.getMessage().lines().toList();
    }
  }

  private Finding printAndRead() {
    try {
      return Doctor.printAndRead(desk.reader().apply(NumberJudge.USUALLY_SURE));
    } catch (LinkageError e) {
      return new Finding(
          "Print and read",
          Finding.Grade.ILL,
          "OpenCV does not load here (" + e.getMessage() + "): see which systems Sheaf runs on.");
    }
  }

  /** Writes a line; whether something does not work. */
  private boolean tell(Finding found) {
    String lead = "%-5s  %-14s  ".formatted(found.grade().label(), found.what());
    desk.console().out().print(Text.hanging(lead, found.words(), desk.console().columns()));
    return found.grade() == Finding.Grade.ILL;
  }
}
