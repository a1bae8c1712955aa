package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sheaf.core.reading.Head;
import sheaf.scanner.sheet.FlatSheet;

/**
 * Which of a sheet's holes are broadheads', all judged together: so many were shot, their blades
 * are alike, and a line at a field point's hole may be a neighbour's slit.
 */
final class HeadChoice {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** What speaks for the head that belongs to a hole's dot. */
  private static final double AT_ITS_DOT = 8;

  /** What each millimetre by which a head's longest slit differs from the others' takes away. */
  private static final double UNEVEN = 0.25;

  private static final double MOST_UNEVEN = 2.5;

  /** No blade reaches farther from the axis, in millimetres: the widest cut is 55 mm. */
  private static final double FARTHEST = 29;

  /** What a longer line takes away: it is another's slit, or the pen's. */
  private static final double TOO_FAR = 2.5;

  /**
   * Another choice for which almost as much speaks leaves it open: of 130 made sheets, judged as if
   * they had but one dot, one is told wrongly by more than this, and eleven rightly by less.
   */
  private static final double CLEARLY = 10;

  /** Most choices that are tried; more holes than that are judged one by one. */
  private static final int MOST_CHOICES = 3000;

  private final List<FoundHole> holes;

  /** For each hole the head that belongs to its dot. */
  private final List<Head> dots;

  /** For each hole what speaks for two, three and four blades. */
  private final double[][] telling;

  /** For each hole the length of its longest line in millimetres. */
  private final double[] longest;

  /** For each hole and each of its lines the holes of which it may be a slit. */
  private final List<List<BitSet>> explained;

  /** For each hole and the lines of it that others explain, what speaks for each head. */
  private final List<Map<BitSet, double[]>> heads = new ArrayList<>();

  private HeadChoice(List<FoundHole> holes, Map<FoundHole, Head> dots) {
    this.holes = holes;
    this.dots = holes.stream().map(hole -> dots.getOrDefault(hole, Head.UNKNOWN)).toList();
    this.telling =
        holes.stream()
            .map(
                hole ->
                    IntStream.rangeClosed(HeadShape.FEWEST, HeadShape.MOST)
                        .mapToDouble(blades -> telling(hole, hole.lines(), blades))
                        .toArray())
            .toArray(double[][]::new);
    this.longest = holes.stream().mapToDouble(HeadChoice::longest).toArray();
    this.explained =
        holes.stream()
            .map(hole -> hole.lines().stream().map(line -> explaining(hole, line)).toList())
            .toList();
    holes.forEach(hole -> heads.add(new HashMap<>()));
  }

  /** Holes by their numbers, and how much speaks for their being the broadheads'. */
  private record Choice(BitSet broadheads, double score) {}

  /**
   * The likeliest choice.
   *
   * @param dots the head that was to be shot at the dot beside each hole; unknown for a shared one
   * @param broadheads how many were shot
   * @return empty when there are too many choices, or another is nearly as likely
   */
  static Optional<Set<FoundHole>> of(
      List<FoundHole> holes, Map<FoundHole, Head> dots, int broadheads) {
    List<BitSet> choices = new ArrayList<>();
    choose(holes.size(), broadheads, 0, new BitSet(), choices);
    if (choices.size() > MOST_CHOICES) {
      return Optional.empty();
    }
    HeadChoice head = new HeadChoice(holes, dots);
    List<Choice> sorted =
        choices.stream()
            .map(choice -> new Choice(choice, head.score(choice)))
            .sorted(Comparator.comparingDouble(Choice::score).reversed())
            .toList();
    boolean clear = sorted.size() == 1 || sorted.get(0).score - sorted.get(1).score >= CLEARLY;
    return clear
        ? Optional.of(
            sorted.get(0).broadheads.stream().mapToObj(holes::get).collect(Collectors.toSet()))
        : Optional.empty();
  }

  private double score(BitSet broadheads) {
    double score = -uneven(broadheads);
    double[] byBlades = new double[HeadShape.MOST - HeadShape.FEWEST + 1];
    for (int i = 0; i < holes.size(); i++) {
      boolean broadhead = broadheads.get(i);
      if (broadhead) {
        for (int blades = 0; blades < byBlades.length; blades++) {
          byBlades[blades] += telling[i][blades];
        }
      } else {
        score -= most(holes.get(i), unexplained(i, broadheads));
      }
      if (dots.get(i) == (broadhead ? Head.BROADHEAD : Head.FIELD)) {
        score += AT_ITS_DOT;
      }
    }
    return score + Arrays.stream(byBlades).max().orElseThrow() + alike(broadheads);
  }

  /** How much speaks for their all bearing one and the same head, of any kind. */
  private double alike(BitSet broadheads) {
    double[] sums = null;
    for (int i = broadheads.nextSetBit(0); i >= 0; i = broadheads.nextSetBit(i + 1)) {
      double[] odds = odds(i, broadheads);
      sums = sums == null ? odds.clone() : plus(sums, odds);
    }
    return sums == null ? 0 : Arrays.stream(sums).max().orElseThrow();
  }

  private static double[] plus(double[] sums, double[] more) {
    for (int i = 0; i < sums.length; i++) {
      sums[i] += more[i];
    }
    return sums;
  }

  private double[] odds(int hole, BitSet broadheads) {
    List<Slit> lines = holes.get(hole).lines();
    BitSet others = new BitSet();
    for (int line = 0; line < lines.size(); line++) {
      others.set(line, explained.get(hole).get(line).intersects(broadheads));
    }
    return heads
        .get(hole)
        .computeIfAbsent(others, some -> BladeOdds.of(holes.get(hole).circle(), lines, some));
  }

  /** One archer's broadheads cut alike, so their slits are about as long, and none too long. */
  private double uneven(BitSet broadheads) {
    double[] lengths = broadheads.stream().mapToDouble(i -> longest[i]).sorted().toArray();
    double usual = lengths.length == 0 ? 0 : lengths[lengths.length / 2];
    return Arrays.stream(lengths)
        .map(
            one ->
                Math.min(MOST_UNEVEN, UNEVEN * Math.abs(one - usual))
                    + (one > FARTHEST ? TOO_FAR : 0))
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
  private List<Slit> unexplained(int hole, BitSet broadheads) {
    List<Slit> lines = holes.get(hole).lines();
    return IntStream.range(0, lines.size())
        .filter(line -> !explained.get(hole).get(line).intersects(broadheads))
        .mapToObj(lines::get)
        .toList();
  }

  private BitSet explaining(FoundHole hole, Slit line) {
    BitSet others = new BitSet();
    for (int i = 0; i < holes.size(); i++) {
      FoundHole other = holes.get(i);
      others.set(
          i,
          other != hole
              && other.lines().stream()
                  .anyMatch(slit -> slit.covers(other.circle(), line, hole.circle())));
    }
    return others;
  }

  private static void choose(int holes, int count, int from, BitSet chosen, List<BitSet> choices) {
    if (count == 0 || choices.size() > MOST_CHOICES) {
      choices.add((BitSet) chosen.clone());
      return;
    }
    for (int i = from; i <= holes - count; i++) {
      chosen.set(i);
      choose(holes, count - 1, i + 1, chosen, choices);
      chosen.clear(i);
    }
  }
}
