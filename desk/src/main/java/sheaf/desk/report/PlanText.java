package sheaf.desk.report;

import java.util.Locale;
import sheaf.core.job.JobId;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Inches;
import sheaf.core.page.MmVector;
import sheaf.core.result.Verdict;
import sheaf.core.tune.Axis;
import sheaf.core.tune.Plan;
import sheaf.core.tune.Response;

/** A plan for a person. */
public final class PlanText {

  private PlanText() {}

  /** What to do in a line, why in a paragraph for each reason, then what is known of the bow. */
  public static String of(JobId job, Plan plan, UnitSystem units, int width) {
    StringBuilder text = new StringBuilder("Job " + job.spoken() + "\n");
    text.append(Text.hanging("  Next: ", headline(plan) + ".", width));
    plan.remarks().forEach(remark -> text.append(Text.hanging("  - ", remark, width)));
    plan.now()
        .ifPresent(
            now -> {
              String where = Verdict.direction(now.offset(), units) + " at 20 yd, give or take ";
              text.append(
                  Text.hanging(
                      "  Now: ",
                      "broadheads hit " + where + length(now.region().semiMajor(), units) + ".",
                      width));
            });
    plan.learnt().forEach(learnt -> text.append(Text.hanging("  ", learnt(learnt, units), width)));
    return text.toString();
  }

  /** What to do, in a few words without an end. */
  public static String headline(Plan plan) {
    return switch (plan.kind()) {
      case DO_NOT_SHOOT -> "DO NOT SHOOT this bow";
      case SHOOT_FIRST -> "shoot before anything is moved";
      case SAME_POINT -> "nothing to move";
      case MORE_ARROWS -> "move nothing, shoot more arrows";
      case STARTING_MOVE, COMPUTED_MOVE ->
          "move " + plan.move().orElseThrow().words() + ", then shoot a new sheet";
      case NO_LEVER -> "see to arrows and heads";
    };
  }

  private static String learnt(Plan.Learnt learnt, UnitSystem units) {
    Response response = learnt.response();
    MmVector way = response.perStep();
    boolean sideways = learnt.lever().axis() == Axis.SIDEWAYS;
    double deviation = sideways ? response.rightDeviation() : response.downDeviation();
    String known = response.directionKnown(learnt.lever().axis()) ? "" : "; not told yet";
    return "This bow: %s, %s %s, moves broadheads %s, give or take %s%s."
        .formatted(
            learnt.lever().part().label(),
            learnt.lever().step().words(1),
            learnt.lever().axis().word(1),
            way(way, units),
            length(2 * deviation, units),
            known);
  }

  private static String way(MmVector way, UnitSystem units) {
    return length(Math.abs(way.dx()), units)
        + (way.dx() < 0 ? " left, " : " right, ")
        + length(Math.abs(way.dy()), units)
        + (way.dy() < 0 ? " up" : " down");
  }

  private static String length(double mm, UnitSystem units) {
    return units == UnitSystem.INCHES
        ? Inches.decimal(mm)
        : String.format(Locale.ROOT, "%.0f mm", mm);
  }
}
