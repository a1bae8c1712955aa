package sheaf.core.tune;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import sheaf.core.group.Comparison;
import sheaf.core.group.Equivalence;
import sheaf.core.group.SamePoint;
import sheaf.core.layout.BowType;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Inches;
import sheaf.core.record.Tear;
import sheaf.core.record.Visit;
import sheaf.core.result.Verdict;

/** The sentences of a plan, in our own plain trade words. */
record PlanWords(
    Visit visit, BowSetup setup, Trials trials, BowModel bow, Trials.Course own, ShopPrior prior) {

  /** A change of the offset's length counts as told beyond so many standard deviations. */
  private static final double TOLD = 2;

  private static final String AGREED =
      ", but the broadheads need nothing: that the heads agree counts for more.";

  private static final String UNDECIDED =
      "; the broadheads do not ask for it so far, and what they come to counts for more.";

  /** At more than this the words "see to the groups" stand instead of a number of arrows. */
  private static final String TOO_MANY =
      "More than 30 more arrows of each head would be needed: see to smaller groups first (form,"
          + " arrows of one mass and stiffness), or shoot from nearer.";

  /**
   * The heads hit the same point.
   *
   * @param last sheet, as a card judges it by itself
   */
  List<String> samePoint(Comparison last) {
    List<String> remarks = new ArrayList<>(unexpected());
    remarks.add(
        evidence()
            + " that broadheads and field points now hit the same point: leave the bow as it is and"
            + " measure it as left.");
    double tolerance = SamePoint.toleranceAt(trials.last().distance());
    if (Equivalence.judge(last.offset(), tolerance) != Equivalence.SHOWN) {
      remarks.add(onTheCard(last.moreOfEach(tolerance)));
    }
    tear(Optional.empty(), AGREED).ifPresent(remarks::add);
    return remarks;
  }

  private String evidence() {
    List<Trial> counting = own.counting();
    List<Integer> sheets = counting.stream().map(Trial::sheet).toList();
    if (sheets.size() == 1) {
      return "Sheet " + sheets.get(0) + " shows";
    }
    boolean moved =
        counting.subList(1, counting.size()).stream().anyMatch(trial -> !trial.before().isEmpty());
    return "Sheets "
        + joined(sheets)
        + (moved ? " together, with what was moved between them, show" : " together show");
  }

  private static String onTheCard(OptionalInt more) {
    return "That counts all of this job's pair sheets, and takes shots to scatter alike in all"
        + " directions and moves to add up. A card judges the last sheet by itself and assumes no"
        + " such thing: "
        + (more.isPresent()
            ? "about %d more of each head would show it there too."
                .formatted(Math.max(more.getAsInt(), 1))
            : "it will not show it with these groups.");
  }

  /** Where something must have changed that nobody noted. */
  private List<String> unexpected() {
    return own.unexpected().stream().map(PlanWords::unexpected).toList();
  }

  private static String unexpected(Trial trial) {
    return (trial.before().isEmpty()
            ? "Sheet %d differs from the pair sheet before it by more than scatter, though nothing is noted as changed: was something moved, or did something slip?"
            : "Sheet %d is farther from where the change before it should have led than scatter explains: was another amount moved, or did something slip?")
        .formatted(trial.sheet());
  }

  List<String> moreArrows(OptionalInt more) {
    List<String> remarks = new ArrayList<>(lastChange());
    remarks.add(
        "Move nothing: the shots scatter too much to say which way, or whether, the broadheads are"
            + " off.");
    remarks.add(
        more.isPresent()
            ? "Shoot %d or more of each head at this same setting, on a new sheet; both sheets then count together."
                .formatted(Math.max(more.getAsInt(), 1))
            : TOO_MANY);
    tear(Optional.empty(), UNDECIDED).ifPresent(remarks::add);
    return remarks;
  }

  List<String> scatterHides(Lever lever) {
    List<String> remarks = new ArrayList<>();
    remarks.add(
        "No move is advised: two sheets of these groups differ by more than the largest sensible first move of %s would do."
            .formatted(lever.part().spoken()));
    remarks.add("Shoot more arrows of each head on a sheet, or from nearer.");
    tear(Optional.empty(), UNDECIDED).ifPresent(remarks::add);
    return remarks;
  }

  List<String> noLever() {
    List<String> remarks = new ArrayList<>(lastChange());
    if (setup.bow() == BowType.CROSSBOW) {
      remarks.add(
          "A crossbow has neither rest nor nocking point to move: see to bolts, nocks and heads"
              + " that spin true, and to the maker's tuning instructions.");
      return remarks;
    }
    remarks.add(
        "What was moved so far does not answer enough to bring the heads together. First see that"
            + " the broadheads spin true.");
    for (Axis axis : Axis.values()) {
      remarks.add(
          (axis == Axis.SIDEWAYS ? "Sideways" : "Up and down")
              + " there remain: "
              + String.join("; ", setup.others(axis))
              + ".");
    }
    tear(Optional.empty(), UNDECIDED).ifPresent(remarks::add);
    remarks.add(cautionOfPress());
    return remarks;
  }

  List<String> starting(Move move) {
    List<String> remarks = new ArrayList<>(lastChange());
    boolean begun = trials.moved().contains(move.lever());
    remarks.add(
        begun
            ? "How this bow answers to %s is not told yet. Move %s, nothing else, and shoot a new pair sheet."
                .formatted(move.lever().part().spoken(), move.words())
            : "Common practice, no published standard: move %s, nothing else, and shoot a new pair sheet."
                .formatted(move.words()));
    if (!begun) {
      remarks.add(
          "Sources disagree which way: most move the rest toward the field points, some away from"
              + " them, some only say to try; others move just the sight when broadheads group"
              + " well. The next sheet tells how this bow answers, and the move after it is"
              + " computed from that.");
    }
    tear(Optional.of(move), "").ifPresent(remarks::add);
    setup
        .centreLine()
        .filter(line -> !begun && move.lever().axis() == Axis.SIDEWAYS)
        .map(line -> "Common practice starts from " + line + ".")
        .ifPresent(remarks::add);
    remarks.addAll(cautions(move));
    return remarks;
  }

  List<String> computed(Move move, BowModel after) {
    List<String> remarks = new ArrayList<>(lastChange());
    boolean own = trials.moved().contains(move.lever());
    remarks.add(
        (own
                ? "By how this bow has answered so far"
                : "By how %d earlier %s of this kind answered"
                    .formatted(prior.bows(), prior.bows() == 1 ? "bow" : "bows"))
            + ": move "
            + move.words()
            + ", nothing else, and shoot a new pair sheet.");
    remarks.add(
        "Broadheads should then hit %s at 20 yd, give or take %s."
            .formatted(
                Verdict.direction(after.offset(), setup.units()),
                length(after.region().semiMajor())));
    tear(Optional.of(move), "").ifPresent(remarks::add);
    remarks.addAll(cautions(move));
    return remarks;
  }

  /** What the last change did, where only one thing was changed. */
  private List<String> lastChange() {
    List<String> remarks = new ArrayList<>(unexpected());
    lastMove().ifPresent(remarks::add);
    return remarks;
  }

  private Optional<String> lastMove() {
    Optional<Move> move = trials.lastMove();
    if (move.isEmpty()) {
      return Optional.empty();
    }
    List<Trial> all = trials.trials();
    Trial before = all.get(all.size() - 2);
    Trial after = all.get(all.size() - 1);
    double was = before.offset().length();
    double is = after.offset().length();
    double deviation =
        Math.sqrt(bow.scatter().variance() * (1 / before.weight() + 1 / after.weight()));
    String change = "The last change, " + move.get().words() + ", ";
    if (Math.abs(is - was) <= TOLD * deviation) {
      return Optional.of(
          change + "did no more to the distance between the heads than scatter may have done.");
    }
    String found = "from %s to %s apart at 20 yd.".formatted(length(was), length(is));
    return Optional.of(change + (is > was ? "made it worse: " : "helped: ") + found);
  }

  /**
   * What the last tear says beside the broadheads, so that neither contradicts in silence.
   *
   * @param plan the move that is planned
   * @param otherwise what stands against the tear's move where none is planned
   */
  private Optional<String> tear(Optional<Move> plan, String otherwise) {
    Optional<Tear> last = TearPlan.last(visit);
    if (last.isEmpty()) {
      return Optional.empty();
    }
    String name = "The last tear (sheet %d)".formatted(last.get().sheet());
    if (last.get().isBulletHole()) {
      return Optional.of(name + " is a bullet hole and asks for no move.");
    }
    Axis axis = plan.map(move -> move.lever().axis()).orElse(TearPlan.axis(last.get()));
    Optional<Move> asked =
        Math.abs(axis.along(last.get().pointToTail())) < Tear.NOTHING_MM
            ? Optional.empty()
            : TearPlan.move(last.get(), axis, setup);
    return asked.map(move -> name + tear(move, plan, otherwise));
  }

  private static String tear(Move asked, Optional<Move> plan, String otherwise) {
    String rule = ", by the rule that agrees with broadheads, asks to move " + asked.words();
    if (plan.isEmpty()) {
      return rule + otherwise;
    }
    if (!plan.get().lever().equals(asked.lever())) {
      return rule + ": another lever than the one planned here; do one at a time.";
    }
    boolean same = Math.signum(plan.get().steps()) == Math.signum(asked.steps());
    return same
        ? rule + ": the same way."
        : rule
            + ", against the move planned here. They disagree: look at vane clearance, grip and"
            + " arrow stiffness first. The broadheads are followed because their answer is"
            + " measured.";
  }

  private List<String> cautions(Move move) {
    Part part = move.lever().part();
    return part == Part.YOKE || part == Part.CAMS ? List.of(cautionOfPress()) : List.of();
  }

  private static String cautionOfPress() {
    return "Yokes, cables and cams need a press: the maker's instructions, never with a damaged bow,"
        + " never dry fire.";
  }

  private String length(double mm) {
    return setup.units() == UnitSystem.INCHES
        ? Inches.decimal(mm)
        : String.format(Locale.ROOT, "%.0f mm", mm);
  }

  private static String joined(List<Integer> numbers) {
    int last = numbers.size() - 1;
    String before =
        numbers.subList(0, last).stream().map(String::valueOf).collect(Collectors.joining(", "));
    return before + " and " + numbers.get(last);
  }
}
