package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import sheaf.core.reading.Head;
import sheaf.scanner.sheet.FlatSheet;

/**
 * Which of a sheet's holes are broadheads', all judged together: so many were shot, their blades
 * are alike, and a line at a field point's hole may be a neighbour's slit.
 */
final class HeadChoice {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** What speaks for the head that belongs to a hole's dot, in millimetres of slits. */
  private static final double AT_ITS_DOT = 3;

  /** What each millimetre by which a head's longest slit differs from the others' takes away. */
  private static final double UNEVEN = 0.25;

  private static final double MOST_UNEVEN = 2.5;

  /** Another choice for which almost as much speaks leaves it open. */
  private static final double CLEARLY = 1.5;

  /** A line that keeps within this of a neighbour's slit is that slit, in pixels. */
  private static final double BESIDE = 1.6 * MM;

  /** The neighbour's slit may run on unseen, in pixels. */
  private static final double BEYOND = 3 * MM;

  /** Share of a line that must lie along the neighbour's slit. */
  private static final double ALONG = 0.65;

  private final List<FoundHole> holes;
  private final Map<FoundHole, Head> dots;
  private final List<FoundHole> broadheads;
  private final int blades;
  private final double score;

  /** Most choices that are tried; more holes than that are judged one by one. */
  private static final int MOST_CHOICES = 3000;

  private HeadChoice(
      List<FoundHole> holes, Map<FoundHole, Head> dots, List<FoundHole> broadheads, int blades) {
    this.holes = holes;
    this.dots = dots;
    this.broadheads = broadheads;
    this.blades = blades;
    this.score = score();
  }

  /**
   * The likeliest choice.
   *
   * @param dots the head that was to be shot at the dot beside each hole; unknown for a shared one
   * @param broadheads how many were shot
   * @return empty when there are too many choices, or another is nearly as likely
   */
  static Optional<Set<FoundHole>> of(
      List<FoundHole> holes, Map<FoundHole, Head> dots, int broadheads) {
    List<List<FoundHole>> choices = choices(holes, broadheads);
    if (choices.size() > MOST_CHOICES) {
      return Optional.empty();
    }
    List<HeadChoice> sorted =
        choices.stream()
            .map(choice -> likeliest(holes, dots, choice))
            .sorted(Comparator.comparingDouble((HeadChoice choice) -> choice.score).reversed())
            .toList();
    boolean clear = sorted.size() == 1 || sorted.get(0).score - sorted.get(1).score >= CLEARLY;
    return clear ? Optional.of(Set.copyOf(sorted.get(0).broadheads)) : Optional.empty();
  }

  private static HeadChoice likeliest(
      List<FoundHole> holes, Map<FoundHole, Head> dots, List<FoundHole> broadheads) {
    return IntStream.rangeClosed(2, 4)
        .mapToObj(blades -> new HeadChoice(holes, dots, broadheads, blades))
        .max(Comparator.comparingDouble(choice -> choice.score))
        .orElseThrow();
  }

  private double score() {
    double score = 0;
    for (FoundHole hole : holes) {
      boolean broadhead = broadheads.contains(hole);
      score += broadhead ? telling(hole, hole.lines(), blades) : -most(hole, unexplained(hole));
      if (dots.getOrDefault(hole, Head.UNKNOWN) == (broadhead ? Head.BROADHEAD : Head.FIELD)) {
        score += AT_ITS_DOT;
      }
    }
    return score - uneven();
  }

  /** One archer's broadheads cut alike, so their slits are about as long. */
  private double uneven() {
    double[] longest = broadheads.stream().mapToDouble(HeadChoice::longest).sorted().toArray();
    double usual = longest.length == 0 ? 0 : longest[longest.length / 2];
    return Arrays.stream(longest)
        .map(one -> Math.min(MOST_UNEVEN, UNEVEN * Math.abs(one - usual)))
        .sum();
  }

  private static double longest(FoundHole hole) {
    return hole.lines().stream().mapToDouble(Slit::length).max().orElse(hole.circle().radius())
        / MM;
  }

  private static double telling(FoundHole hole, List<Slit> lines, int blades) {
    return HeadShape.telling(hole.circle(), lines, blades);
  }

  /** What speaks for any broadhead at all. */
  private static double most(FoundHole hole, List<Slit> lines) {
    return Math.max(telling(hole, lines, 2), telling(hole, lines, 3));
  }

  /** The lines at a hole that are not slits of a neighbouring broadhead. */
  private List<Slit> unexplained(FoundHole hole) {
    return hole.lines().stream()
        .filter(line -> broadheads.stream().noneMatch(other -> explains(other, hole, line)))
        .toList();
  }

  private static boolean explains(FoundHole other, FoundHole hole, Slit line) {
    return other.lines().stream().anyMatch(slit -> along(other.circle(), slit, hole, line));
  }

  /** Whether most of a line lies along a slit of another hole, or in that hole. */
  private static boolean along(Circle other, Slit slit, FoundHole hole, Slit line) {
    int steps = 10;
    int near = 0;
    double from = hole.circle().radius();
    for (int i = 0; i <= steps; i++) {
      double out = from + (line.length() - from) * i / steps;
      double dx = hole.circle().x() + out * Math.cos(line.angle()) - other.x();
      double dy = hole.circle().y() + out * Math.sin(line.angle()) - other.y();
      double on = dx * Math.cos(slit.angle()) + dy * Math.sin(slit.angle());
      double aside = Math.abs(dy * Math.cos(slit.angle()) - dx * Math.sin(slit.angle()));
      boolean within = Math.hypot(dx, dy) < other.radius() + BESIDE / 2;
      if (within || on > 0 && on < slit.length() + BEYOND && aside < BESIDE) {
        near++;
      }
    }
    return near >= ALONG * (steps + 1);
  }

  private static List<List<FoundHole>> choices(List<FoundHole> holes, int count) {
    List<List<FoundHole>> choices = new ArrayList<>();
    choose(holes, count, 0, new ArrayList<>(), choices);
    return choices;
  }

  private static void choose(
      List<FoundHole> holes,
      int count,
      int from,
      List<FoundHole> chosen,
      List<List<FoundHole>> choices) {
    if (chosen.size() == count || choices.size() > MOST_CHOICES) {
      choices.add(List.copyOf(chosen));
      return;
    }
    for (int i = from; i <= holes.size() - (count - chosen.size()); i++) {
      chosen.add(holes.get(i));
      choose(holes, count, i + 1, chosen, choices);
      chosen.remove(chosen.size() - 1);
    }
  }
}
