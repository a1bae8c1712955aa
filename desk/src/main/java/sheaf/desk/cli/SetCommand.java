package sheaf.desk.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sheaf.core.answer.Answer;
import sheaf.core.answer.Said;
import sheaf.core.answer.TypedValue;
import sheaf.core.answer.TypedValue.NotUnderstoodException;
import sheaf.core.answer.TypedValue.Range;
import sheaf.core.job.JobId;
import sheaf.core.reading.FieldReading.Teller;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.report.Text;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;
import sheaf.desk.work.SheetsOfJob;

/** {@code sheaf set}: types values in, or corrects them. */
@Command(
    name = "set",
    header = "Type in or correct what stands on a job's cards and sheets.",
    footer = {
      "",
      "Without a value, the fields are named with what they hold. An empty value",
      "says that nothing is written. A field of another sheet than the cards has the",
      "sheet's number before it: 4:distance. What was known before is kept; 'sheaf",
      "show JOB --history' tells all of it.",
      "",
      "Examples:",
      "  sheaf set 7G4KQ-2M8XE-0 draw_length_left=29 3/8 in peak_weight_left=59.9 lb",
      "  sheaf set 7G4KQ-2M8XE-0 axle_to_axle_left=813 mm --why 'measured again'",
      "  sheaf set 7G4KQ-2M8XE-0 4:distance=20 inspect_limbs='not sound'",
      "  sheaf set 7G4KQ-2M8XE-0",
      "",
      "If one value is not understood, none is taken."
    })
final class SetCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(
      index = "0",
      paramLabel = "JOB",
      converter = JobWord.class,
      description = "The id printed on its papers.")
  private JobId job;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "FIELD=VALUE",
      description = "Such as draw_length_left=29 3/8 in.")
  private List<String> words = new ArrayList<>();

  @Option(names = "--by", paramLabel = "WHO", description = "Who says so. Default: the user.")
  private String who;

  @Option(names = "--why", paramLabel = "TEXT", description = "Kept with it.")
  private String why;

  @Option(
      names = "--anyway",
      description = "Take numbers beyond what is usual: they were not mistyped.")
  private boolean anyway;

  SetCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  /** A field, and what was typed for it. */
  private record Typed(String field, String value) {}

  @Override
  public Integer call() {
    Console console = desk.console();
    try (Store store = StoredJob.toAnswer(job, sheaf.store(), desk.clock())) {
      SettableFields fields = new SettableFields(SheetsOfJob.of(job, store));
      if (words.isEmpty()) {
        console.out().print(fields.list());
      } else {
        set(fields, store);
      }
    }
    console.flush();
    return ExitStatus.OK.number();
  }

  private void set(SettableFields fields, Store store) {
    List<Answer> answers = new ArrayList<>();
    List<String> said = new ArrayList<>();
    for (Typed typed : typed()) {
      SettableFields.Settable field = fields.find(typed.field());
      Answer answer = answer(field, typed);
      answers.add(answer);
      said.add(inWords(field, (Said.Value) answer.said()));
    }
    store.answer(job, answers, Version.number());
    said.forEach(
        line -> desk.console().out().print(Text.hanging("  ", line, desk.console().columns())));
  }

  /** Words without an equals sign go on with the value before them. */
  private List<Typed> typed() {
    List<Typed> typed = new ArrayList<>();
    for (String word : words) {
      int equals = word.indexOf('=');
      if (equals > 0) {
        typed.add(new Typed(word.substring(0, equals).strip(), word.substring(equals + 1)));
      } else if (typed.isEmpty()) {
        throw Trouble.misuse(
            "'" + word + "' must be FIELD=VALUE, such as draw_length_left=29 3/8 in.");
      } else {
        Typed last = typed.remove(typed.size() - 1);
        typed.add(new Typed(last.field(), last.value() + " " + word));
      }
    }
    return typed;
  }

  private Answer answer(SettableFields.Settable field, Typed typed) {
    try {
      Said.Value value =
          TypedValue.of(
              field.field(),
              typed.value(),
              anyway ? Range.ANY : Range.USUAL,
              Teller.TYPED,
              field.seen());
      return new Answer(
          field.sheet(),
          value,
          Optional.of(who == null ? desk.who() : who),
          desk.clock().instant(),
          Optional.ofNullable(why));
    } catch (NotUnderstoodException e) {
      String usual = e.getMessage().endsWith("?") ? " With --anyway it is taken." : ".";
      throw Trouble.misuse(typed.field() + " " + e.getMessage() + usual);
    }
  }

  private static String inWords(SettableFields.Settable field, Said.Value value) {
    String now = value.text().isEmpty() ? "nothing is written" : value.words();
    String was = field.now().isEmpty() ? "was blank" : "was " + field.now();
    return field.field().label() + ": " + now + " (" + was + ")";
  }
}
