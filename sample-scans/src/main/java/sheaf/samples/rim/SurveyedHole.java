package sheaf.samples.rim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import sheaf.core.page.MmPoint;
import sheaf.scanner.hole.RimSurvey;

/**
 * A place of a sheet where a hole was looked for.
 *
 * @param kind what is seen through the sheet's holes
 * @param choice of the true axis and radius among many; empty where there is no hole
 * @param atRadius features of every view for the true radius
 * @param open how much is open
 */
record SurveyedHole(
    String kind, Optional<Logit.Choice> choice, List<float[]> atRadius, double open) {

  /** Views nearer to the axis than this are all kept, in millimetres. */
  private static final double NEAR = 0.7;

  private static final double AROUND = 1.8;

  /** Views kept in all; those around the axis are two in three of them. */
  private static final int KEPT = 96;

  /** Deviation of the target around the true axis, in millimetres: less than the views' pitch. */
  private static final double TARGET = 0.18;

  /** Deviation of the target around the true radius, in pixels. */
  private static final double RADIUS_TARGET = 1;

  /** Radii that the true one is told from, in pixels. */
  private static final double[] RADII = {-7, -3.5, 0, 3.5, 7};

  /** Views of a place at a hole's true axis. */
  static SurveyedHole hole(
      String kind, RimSurvey.Place place, MmPoint axis, double radius, Random random) {
    List<RimSurvey.View> views = choose(place.views(), axis, random);
    float[][] features = new float[views.size() * RADII.length][];
    float[] shares = new float[features.length];
    List<float[]> atRadius = new ArrayList<>();
    float all = 0;
    for (int r = 0; r < RADII.length; r++) {
      double off = RADII[r] == 0 ? 0 : RADII[r] + random.nextDouble(-1.5, 1.5);
      for (int v = 0; v < views.size(); v++) {
        RimSurvey.View view = views.get(v);
        int i = r * views.size() + v;
        features[i] = view.features(radius + off);
        double distance = view.centre().distanceTo(axis) / TARGET;
        double wide = off / RADIUS_TARGET;
        shares[i] = (float) Math.exp(-(distance * distance + wide * wide) / 2);
        all += shares[i];
        if (RADII[r] == 0) {
          atRadius.add(features[i]);
        }
      }
    }
    for (int i = 0; i < shares.length; i++) {
      shares[i] /= all;
    }
    return new SurveyedHole(
        kind, Optional.of(new Logit.Choice(features, shares)), atRadius, place.open());
  }

  /** Views of a place where there is no hole. */
  static SurveyedHole none(String kind, RimSurvey.Place place, double radius) {
    List<float[]> features = place.views().stream().map(view -> view.features(radius)).toList();
    return new SurveyedHole(kind, Optional.empty(), features, place.open());
  }

  /** All views near the axis, many around it, some far off. */
  private static List<RimSurvey.View> choose(
      List<RimSurvey.View> views, MmPoint axis, Random random) {
    List<RimSurvey.View> mixed = new ArrayList<>(views);
    Collections.shuffle(mixed, random);
    List<RimSurvey.View> chosen = new ArrayList<>();
    mixed.stream().filter(view -> view.centre().distanceTo(axis) < NEAR).forEach(chosen::add);
    mixed.stream()
        .filter(view -> view.centre().distanceTo(axis) >= NEAR)
        .filter(view -> view.centre().distanceTo(axis) < AROUND)
        .limit(Math.max(0, KEPT * 2 / 3 - chosen.size()))
        .forEach(chosen::add);
    mixed.stream()
        .filter(view -> view.centre().distanceTo(axis) >= AROUND)
        .limit(KEPT - chosen.size())
        .forEach(chosen::add);
    return chosen;
  }

  /** The features of the likeliest view, how much is open, and a constant. */
  float[] likeliest(float[] where) {
    float[] best =
        Collections.max(
            atRadius, (a, b) -> Float.compare(Logit.dot(where, a), Logit.dot(where, b)));
    float[] all = Arrays.copyOf(best, best.length + 2);
    all[best.length] = (float) open;
    all[best.length + 1] = 1;
    return all;
  }
}
