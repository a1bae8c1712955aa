package sheaf.forms.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.SheetKind;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.result.JobSummary;

/** What a job's bench card says, for the finished card. */
final class SetUp {

  private static final String LEFT = "_left";
  private static final String AS_LEFT = " as left";
  private static final String INSPECT = "inspect_";

  private final JobSummary job;
  private final Layout layout;
  private final boolean read;

  private SetUp(JobSummary job, Optional<Layout> card) {
    this.job = job;
    this.layout =
        card.orElseGet(() -> Layouts.current(Variant.FRONT, Paper.LETTER, UnitSystem.INCHES));
    this.read = card.isPresent();
  }

  static SetUp of(JobSummary job) {
    Optional<Layout> card =
        job.sheets().stream()
            .flatMap(page -> page.sheet().stream())
            .filter(sheet -> sheet.layout().kind() == SheetKind.BENCH_CARD)
            .flatMap(sheet -> Layouts.find(sheet.layout()).stream())
            .reduce((earlier, later) -> later);
    return new SetUp(job, card);
  }

  /** Whether a bench card was read. */
  boolean read() {
    return read;
  }

  /**
   * A measure as the bow was left.
   *
   * @param label what it is
   * @param value with its unit; empty when it was not measured
   */
  record Measure(String label, Optional<String> value) {}

  /** Every measure that the bench card asks for, in its order. */
  List<Measure> measures() {
    List<Measure> measures = new ArrayList<>();
    for (Field field : layout.fields()) {
      if (field.key().endsWith(LEFT)) {
        String label = field.label().replace(AS_LEFT, "");
        measures.add(new Measure(label, job.benchCard(field.key()).map(SetUp::value)));
      }
    }
    return measures;
  }

  private static String value(FieldReading reading) {
    if (reading.text().isEmpty()) {
      return "not read in yet";
    }
    String unit = reading.unit().map(u -> " " + u.symbol()).orElse("");
    return reading.text() + unit + (reading.state() == State.CHECK ? " ?" : "");
  }

  /** Hand, release and inspection in a sentence each. */
  String sentences() {
    if (!read) {
      return "No bench card has been read in: inspection and measures are not known.";
    }
    List<String> parts = new ArrayList<>();
    said("hand").ifPresent(hand -> parts.add("Hand: " + hand + "."));
    said("loosed_by").ifPresent(by -> parts.add("Loosed by: " + by + "."));
    List<String> sound = inspected(State.READ);
    List<String> unmarked = inspected(State.BLANK);
    if (unmarked.isEmpty() && job.notSound().isEmpty()) {
      parts.add("Inspection: every part found sound.");
    } else {
      if (!sound.isEmpty()) {
        parts.add("Found sound: " + String.join("; ", sound) + ".");
      }
      if (!unmarked.isEmpty()) {
        parts.add("Not inspected: " + String.join("; ", unmarked) + ".");
      }
    }
    return String.join(" ", parts);
  }

  /** The parts that must keep anyone from shooting, as the bench card calls them. */
  List<String> notSound() {
    return job.notSound().stream().map(part -> layout.field(INSPECT + part).label()).toList();
  }

  /** Parts found sound, or, for {@link State#BLANK}, parts whose row was left empty. */
  private List<String> inspected(State state) {
    return layout.fields().stream()
        .filter(field -> field.key().startsWith(INSPECT))
        .filter(
            field -> {
              Optional<FieldReading> reading = job.benchCard(field.key());
              return state == State.BLANK
                  ? reading.isEmpty()
                  : reading.filter(r -> r.says("sound")).isPresent();
            })
        .map(Field::label)
        .toList();
  }

  private Optional<String> said(String key) {
    return job.benchCard(key).map(SetUp::value);
  }
}
