package sheaf.desk.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sheaf.core.job.JobId;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;

/** {@code sheaf confirm}: walks through what is doubtful about a job's sheets. */
@Command(
    name = "confirm",
    header = "Answer what is doubtful about a job's sheets, question by question.",
    footer = {
      "",
      "Each question comes with what is likeliest and with a picture of the place.",
      "Enter takes what stands in brackets; something typed is taken instead, such",
      "as '29 3/8 in', 'broadhead' or 'none'; s skips, q ends. Every answer is kept",
      "at once, with who gave it and when; what the machine read is kept as well.",
      "",
      "Examples:",
      "  sheaf confirm 7G4KQ-2M8XE-0",
      "      asks about everything that is left",
      "  sheaf confirm 7G4KQ-2M8XE-0 --pictures look --by T.S.",
      "      with the pictures in the folder 'look', and initials instead of the",
      "      user's name on this computer",
      "",
      "Exit status: 0 nothing is left to ask, 3 something is."
    })
final class ConfirmCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(
      paramLabel = "JOB",
      converter = JobWord.class,
      description = "The id printed on its papers.")
  private JobId job;

  @Option(
      names = "--pictures",
      paramLabel = "DIR",
      description = "Where to write the pictures. Default: doubts/JOB in Sheaf's folder.")
  private Path pictures;

  @Option(names = "--by", paramLabel = "WHO", description = "Who answers. Default: the user.")
  private String who;

  ConfirmCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    Path folder =
        Optional.ofNullable(pictures)
            .orElseGet(() -> sheaf.home().path().resolve("doubts").resolve(job.spoken()));
    try (Store store = StoredJob.toAnswer(job, sheaf.store(), desk.clock())) {
      ConfirmRun run =
          new ConfirmRun(desk, store, job, Optional.ofNullable(who).orElse(desk.who()));
      return run.run(folder, sheaf.homeWords()).number();
    }
  }
}
