package sheaf.desk.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import sheaf.core.answer.Answer;
import sheaf.core.answer.Question;
import sheaf.core.answer.Said;
import sheaf.core.answer.TypedValue.NotUnderstoodException;
import sheaf.core.job.JobId;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.report.Text;
import sheaf.desk.store.Store;
import sheaf.desk.work.SheetsOfJob;

/** One walk through a job's doubts. */
final class ConfirmRun {

  private static final String SKIP = "s";
  private static final String QUIT = "q";

  private final Desk desk;
  private final Console console;
  private final Store store;
  private final JobId job;
  private final String who;
  private final BufferedReader typed;
  private final Set<Question> skipped = new HashSet<>();
  private int kept;

  ConfirmRun(Desk desk, Store store, JobId job, String who) {
    this.desk = desk;
    this.console = desk.console();
    this.store = store;
    this.job = job;
    this.who = who;
    this.typed = new BufferedReader(new InputStreamReader(desk.in(), Charset.defaultCharset()));
  }

  /**
   * Asks until nothing is left, or the person ends it.
   *
   * @param folder for the pictures
   * @param home options that the next command needs to find the job
   */
  ExitStatus run(Path folder, String home) {
    List<Question> left = SheetsOfJob.of(job, store).questions();
    LookPictures pictures = LookPictures.write(left, job, store, desk.places(), folder);
    boolean goesOn = true;
    Optional<Question> next = next(left);
    while (goesOn && next.isPresent()) {
      Question question = next.get();
      say(question, left.size(), pictures.of(question));
      goesOn = answer(question);
      left = SheetsOfJob.of(job, store).questions();
      next = next(left);
    }
    end(left.size(), home);
    return left.isEmpty() ? ExitStatus.OK : ExitStatus.CHECK;
  }

  private Optional<Question> next(List<Question> left) {
    return left.stream().filter(question -> !skipped.contains(question)).findFirst();
  }

  private void say(Question question, int left, Optional<Path> picture) {
    int width = console.columns();
    String head = "Sheet " + question.sheet() + ", " + Text.count(left, "question") + " left";
    console.out().println(head);
    console.out().print(Text.hanging("  ", question.words(), width));
    picture.ifPresent(file -> console.out().println("  Look at: " + file));
    console.out().println("  Or type: " + question.choices() + "; s skips, q ends");
  }

  /** Asks until an answer is understood; false when the person ends it. */
  private boolean answer(Question question) {
    while (true) {
      String line = typed(question);
      if (line == null || line.equalsIgnoreCase(QUIT)) {
        console.out().println();
        return false;
      }
      if (line.equalsIgnoreCase(SKIP)) {
        skipped.add(question);
        console.out().println();
        return true;
      }
      try {
        List<Said> said = line.isEmpty() ? question.accepted() : List.of(question.typed(line));
        if (!said.isEmpty()) {
          keep(question, said);
          return true;
        }
        console.out().println("  There is nothing to take: type it, or s to skip.");
      } catch (NotUnderstoodException e) {
        console.out().print(Text.hanging("  ", "It " + e.getMessage() + ".", console.columns()));
      }
    }
  }

  /** What a person typed; null at the end of what is piped in. */
  private String typed(Question question) {
    console.out().print("  " + question.offer().map(offer -> "[" + offer + "] ").orElse("") + "> ");
    console.flush();
    try {
      String line = typed.readLine();
      if (line != null && !console.watched()) {
        // Nobody saw it being typed.
        console.out().println(line);
      }
      return line == null ? null : line.strip();
    } catch (IOException e) {
      throw Trouble.cannotRead("Standard input", e);
    }
  }

  private void keep(Question question, List<Said> said) {
    List<Answer> answers =
        said.stream()
            .map(
                one ->
                    new Answer(
                        OptionalInt.of(question.sheet()),
                        one,
                        Optional.of(who),
                        desk.clock().instant(),
                        Optional.empty()))
            .toList();
    store.answer(job, answers, Version.number());
    kept++;
    console.out().println("  Kept." + nowRead(question.sheet()));
    console.out().println();
  }

  private String nowRead(int number) {
    return SheetsOfJob.of(job, store).said().sheets().stream()
        .filter(page -> page.sheet().orElseThrow().number() == number)
        .map(PageReading::state)
        .filter(state -> state == ReadingState.READ)
        .map(state -> " Nothing is left to ask about sheet " + number + ".")
        .findFirst()
        .orElse("");
  }

  private void end(int left, String home) {
    String answers = kept == 0 ? "No answer was given." : Text.count(kept, "answer") + " kept.";
    String rest =
        left == 0
            ? " Nothing is left to ask. See it all: sheaf show "
            : " " + Text.count(left, "question") + " left: sheaf confirm ";
    String text = (answers + rest + job.spoken() + " " + home).strip();
    Text.wrap(text, console.columns()).forEach(console.out()::println);
    console.flush();
  }
}
