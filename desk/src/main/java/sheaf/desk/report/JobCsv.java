package sheaf.desk.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.energy.BowNumbers;
import sheaf.core.energy.Figure;
import sheaf.core.group.Group;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Measure;
import sheaf.core.record.Taken;
import sheaf.core.record.Tear;
import sheaf.core.record.Visit;
import sheaf.core.result.GroupResult;
import sheaf.core.result.PairResult;

/**
 * A job as a table for spreadsheets: a line for each value, {@code job,sheet,what,value,unit}, as
 * RFC 4180 has it. The sheet is empty for what belongs to the bow; offsets and tears are in true
 * millimetres, right and down positive.
 */
public final class JobCsv {

  private static final String HEAD = "job,sheet,what,value,unit\r\n";

  private final String job;
  private final StringBuilder text = new StringBuilder(HEAD);

  private JobCsv(Visit visit) {
    this.job = visit.job().spoken();
  }

  /** The table; lines, each with its end. */
  public static String of(BowRecord record, BowNumbers numbers) {
    Visit visit = record.last();
    JobCsv csv = new JobCsv(visit);
    visit.measures().forEach(csv::measure);
    record.bow().traits().forEach(trait -> csv.taken(trait.key(), Optional.of(trait.answer())));
    for (Figure figure : numbers.figures()) {
      csv.line("", figure.key(), NumbersText.value(figure), figure.unit());
    }
    visit.tears().forEach(csv::tear);
    visit.pairs().forEach(csv::pair);
    visit.groups().forEach(csv::group);
    return csv.text.toString();
  }

  private void measure(Measure measure) {
    taken(measure.key() + "_found", measure.found());
    taken(measure.key() + "_left", measure.left());
  }

  private void taken(String what, Optional<Taken> taken) {
    taken
        .filter(answer -> !answer.text().isEmpty())
        .ifPresent(
            answer ->
                line(
                    "",
                    what,
                    answer.value().isPresent()
                        ? String.valueOf(answer.value().getAsDouble())
                        : answer.text(),
                    answer.unit().map(unit -> unit.symbol()).orElse("")));
  }

  private void tear(Tear tear) {
    String sheet = String.valueOf(tear.sheet());
    String zone = "tear_" + tear.zone();
    mm(sheet, zone + "_right", tear.pointToTail().dx());
    mm(sheet, zone + "_down", tear.pointToTail().dy());
  }

  private void pair(PairResult pair) {
    String sheet = String.valueOf(pair.sheet().number());
    pair.distance().ifPresent(d -> line(sheet, "distance", number(d.value()), d.unit().symbol()));
    pair.field().ifPresent(group -> group(sheet, "field", group));
    pair.broadhead().ifPresent(group -> group(sheet, "broadhead", group));
    pair.offset()
        .ifPresent(
            offset -> {
              mm(sheet, "offset_right", offset.shift().dx());
              mm(sheet, "offset_down", offset.shift().dy());
            });
    pair.equivalence()
        .ifPresent(said -> line(sheet, "same_point", said.name().toLowerCase(Locale.ROOT), ""));
  }

  private void group(GroupResult group) {
    group.shots().ifPresent(shots -> group(String.valueOf(group.sheet().number()), "group", shots));
  }

  private void group(String sheet, String what, Group group) {
    line(sheet, what + "_arrows", String.valueOf(group.size()), "");
    mm(sheet, what + "_right", group.centre().x());
    mm(sheet, what + "_down", group.centre().y());
    mm(sheet, what + "_extreme_spread", group.extremeSpread());
    mm(sheet, what + "_mean_radius", group.meanRadius());
  }

  private void mm(String sheet, String what, double mm) {
    line(sheet, what, number(mm), "mm");
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  private void line(String sheet, String what, String value, String unit) {
    List<String> cells = List.of(job, sheet, what, value, unit);
    text.append(String.join(",", cells.stream().map(JobCsv::cell).toList())).append("\r\n");
  }

  /** Quoted where it must be; what a spreadsheet would take for a formula is put behind a quote. */
  private static String cell(String value) {
    boolean formula = value.matches("[=+@\t\r].*|-.*[^\\d.].*");
    String safe = formula ? "'" + value : value;
    return safe.matches("[^\",\r\n]*") ? safe : "\"" + safe.replace("\"", "\"\"") + "\"";
  }
}
