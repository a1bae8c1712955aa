package sheaf.desk.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sheaf.core.job.JobId;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Taken;
import sheaf.core.record.Visit;
import sheaf.core.result.Overview;
import sheaf.core.result.Overview.State;

/**
 * What is kept of every job so that it is found at once. It follows from the rest, is made in the
 * same transaction as what it follows from, and is made anew for all where its form changed.
 */
final class Overviews {

  /** Raised when an overview of the same job would read otherwise than before. */
  static final int FORM = 2;

  private static final String COLUMNS =
      "job, changed_at, day, customer, bow, sheets, missing, doubts, state";

  private Overviews() {}

  /** Makes the overview of a job and keeps it in place of the one before. */
  static void put(Connection connection, JobId job, ZoneId zone) throws SQLException {
    StoredJob stored = StoredJob.find(job, connection, zone).orElseThrow();
    Overview overview = of(connection, stored, job, zone);
    Sql.update(
        connection,
        "INSERT INTO overviews ("
            + COLUMNS
            + ", form, words) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"
            + " ON CONFLICT (job) DO UPDATE SET changed_at = excluded.changed_at,"
            + " day = excluded.day, customer = excluded.customer, bow = excluded.bow,"
            + " sheets = excluded.sheets, missing = excluded.missing, doubts = excluded.doubts,"
            + " state = excluded.state, form = excluded.form, words = excluded.words",
        job.text(),
        Change.TIME.format(overview.changed()),
        overview.day().toString(),
        overview.customer().orElse(null),
        overview.bow().orElse(null),
        overview.sheets(),
        overview.missing().stream().map(String::valueOf).collect(Collectors.joining(",")),
        overview.doubts(),
        overview.state().label(),
        FORM,
        words(overview, stored.record()));
  }

  private static Overview of(Connection connection, StoredJob stored, JobId job, ZoneId zone)
      throws SQLException {
    List<PageReading> sheets = stored.summary().sheets();
    Instant opened = Shelf.opened(connection, job).orElseThrow();
    Instant changed =
        Stream.of(
                Optional.of(opened),
                Shelf.lastRead(connection, job),
                Shelf.lastAnswer(connection, job),
                stored.imported().map(ImportedRecord::at))
            .flatMap(Optional::stream)
            .max(Comparator.naturalOrder())
            .orElseThrow();
    Visit visit = stored.record().last();
    List<Integer> missing = missing(sheets, Shelf.printed(connection, job).keySet());
    int doubts = (int) sheets.stream().filter(page -> page.state() == ReadingState.CHECK).count();
    boolean made = Shelf.lastCard(connection, job).filter(at -> !at.isBefore(changed)).isPresent();
    return new Overview(
        job,
        changed,
        visit.day().orElse(LocalDate.ofInstant(opened, zone)),
        visit.customer(),
        bow(stored.record()),
        sheets.size(),
        missing,
        doubts,
        state(doubts, made, missing));
  }

  private static State state(int doubts, boolean made, List<Integer> missing) {
    if (doubts > 0) {
      return State.DOUBTS;
    }
    if (made) {
      return State.DONE;
    }
    return missing.isEmpty() ? State.CARD : State.SHEETS;
  }

  private static List<Integer> missing(List<PageReading> sheets, Set<Integer> printed) {
    Set<Integer> read =
        sheets.stream()
            .map(page -> page.sheet().orElseThrow().number())
            .collect(Collectors.toCollection(TreeSet::new));
    int last = read.stream().max(Comparator.naturalOrder()).orElse(0);
    Stream<Integer> expected =
        printed.isEmpty() ? IntStream.range(1, last).boxed() : printed.stream();
    return expected.filter(number -> !read.contains(number)).toList();
  }

  private static Optional<String> bow(BowRecord record) {
    return record
        .bow()
        .words()
        .or(
            () ->
                Optional.of(
                        record.bow().traits().stream()
                            .map(trait -> trait.answer())
                            .filter(Taken::isSure)
                            .flatMap(answer -> answer.words().stream())
                            .collect(Collectors.joining(", ")))
                    .filter(words -> !words.isEmpty()));
  }

  /** Everything to look through, in small letters. */
  private static String words(Overview overview, BowRecord record) {
    List<String> words =
        new ArrayList<>(
            List.of(
                overview.job().text(),
                overview.job().spoken(),
                overview.day().toString(),
                overview.state().label()));
    overview.customer().ifPresent(words::add);
    overview.bow().ifPresent(words::add);
    record.last().technician().ifPresent(words::add);
    return String.join(" ", words).toLowerCase(Locale.ROOT);
  }

  /**
   * The jobs of which every word is found, those that changed last first.
   *
   * @param words to look for, in any letters
   * @param open whether to leave out those that are done
   * @param most so many
   */
  static List<Overview> find(Connection connection, List<String> words, boolean open, int most)
      throws SQLException {
    List<Object> values = new ArrayList<>();
    StringBuilder sql = new StringBuilder("SELECT job FROM overviews");
    String join = " WHERE ";
    if (open) {
      sql.append(join).append("state <> 'done'");
      join = " AND ";
    }
    for (String word : words) {
      sql.append(join).append("words LIKE ? ESCAPE '!'");
      values.add("%" + word.toLowerCase(Locale.ROOT).replaceAll("([!%_])", "!$1") + "%");
      join = " AND ";
    }
    sql.append(" ORDER BY changed_at DESC, job LIMIT ?");
    values.add(most);
    // The index alone tells which jobs they are; only of these the rows are fetched.
    String rows =
        "SELECT "
            + COLUMNS
            + " FROM overviews WHERE job IN ("
            + sql
            + ") ORDER BY changed_at DESC, job";
    return Sql.list(connection, rows, Overviews::read, values.toArray());
  }

  private static Overview read(ResultSet row) throws SQLException {
    return new Overview(
        new JobId(row.getString(1)),
        Instant.parse(row.getString(2)),
        LocalDate.parse(row.getString(3)),
        Optional.ofNullable(row.getString(4)),
        Optional.ofNullable(row.getString(5)),
        row.getInt(6),
        Arrays.stream(row.getString(7).split(","))
            .filter(number -> !number.isEmpty())
            .map(Integer::valueOf)
            .toList(),
        row.getInt(8),
        state(row.getString(9)));
  }

  private static State state(String label) throws SQLException {
    return Arrays.stream(State.values())
        .filter(state -> state.label().equals(label))
        .findFirst()
        .orElseThrow(() -> new SQLException("an overview in it is of another version"));
  }

  /** The jobs whose overview is missing or of another form; at most so many. */
  static List<JobId> outdated(Connection connection, int most) throws SQLException {
    return Sql.list(
        connection,
        "SELECT id FROM jobs LEFT JOIN overviews ON job = id WHERE form IS NULL OR form <> ?"
            + " ORDER BY id LIMIT ?",
        row -> new JobId(row.getString(1)),
        FORM,
        most);
  }
}
