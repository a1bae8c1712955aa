package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class StraightLineTest {

  private static final Percentage ELEVEN_DIGITS = Percentage.withPercentage(1e-9);

  private static StraightLine.Point point(double x, double y) {
    return new StraightLine.Point(x, y, 1);
  }

  /** NIST Statistical Reference Datasets, linear regression, Norris: certified values. */
  @Test
  void ofNorrisDataIsAsCertifiedByNist() throws IOException {
    List<StraightLine.Point> points = new ArrayList<>();
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(
                StraightLineTest.class.getResourceAsStream("nist_norris.csv"),
                StandardCharsets.UTF_8))) {
      lines
          .lines()
          .filter(line -> line.matches("[-0-9.].*"))
          .map(line -> Stream.of(line.split(",")).map(Double::valueOf).toList())
          .forEach(pair -> points.add(point(pair.get(1), pair.get(0))));
    }

    StraightLine line = StraightLine.through(points).orElseThrow();

    assertThat(points).hasSize(36);
    assertThat(line.slope()).isCloseTo(1.00211681802045, ELEVEN_DIGITS);
    assertThat(line.intercept()).isCloseTo(-0.262323073774029, ELEVEN_DIGITS);
    assertThat(line.slopeError()).hasValueCloseTo(0.429796848199937e-3, ELEVEN_DIGITS);
    assertThat(line.interceptError()).hasValueCloseTo(0.232818234301152, ELEVEN_DIGITS);
  }

  @Property(tries = 200)
  void isThatOfAnIndependentLibrary(
      @ForAll @Size(min = 3, max = 9) List<@DoubleRange(min = 1, max = 80) Double> xs,
      @ForAll @Size(9) List<@DoubleRange(min = -200, max = 200) Double> ys) {
    // Reference: SimpleRegression of Apache Commons Math 3.6.1.
    SimpleRegression reference = new SimpleRegression();
    List<StraightLine.Point> points = new ArrayList<>();
    for (int i = 0; i < xs.size(); i++) {
      double x = Math.round(xs.get(i)) + 100 * i;
      points.add(point(x, ys.get(i)));
      reference.addData(x, ys.get(i));
    }

    StraightLine line = StraightLine.through(points).orElseThrow();

    assertThat(line.slope()).isCloseTo(reference.getSlope(), within(1e-8));
    assertThat(line.intercept()).isCloseTo(reference.getIntercept(), within(1e-6));
    assertThat(line.slopeError().orElseThrow()).isCloseTo(reference.getSlopeStdErr(), within(1e-8));
    assertThat(line.slopeEstimate().margin().orElseThrow())
        .isCloseTo(reference.getSlopeConfidenceInterval(0.05), within(1e-6));
  }

  @Test
  void countsAWeightedPointAsWeightedLeastSquaresDo() {
    // Reference: Commons Math's multiple regression on rows scaled by the weights' roots.
    double[] x = {3, 5, 10, 15, 20};
    double[] y = {1, 4, -2, 9, 14};
    double[] weight = {1, 0.7, 0.3, 0.2, 0.1};
    double[][] rows = new double[5][];
    double[] scaled = new double[5];
    List<StraightLine.Point> points = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      double root = Math.sqrt(weight[i]);
      rows[i] = new double[] {root, root * x[i]};
      scaled[i] = root * y[i];
      points.add(new StraightLine.Point(x[i], y[i], weight[i]));
    }
    OLSMultipleLinearRegression reference = new OLSMultipleLinearRegression();
    reference.setNoIntercept(true);
    reference.newSampleData(scaled, rows);
    double[] parameters = reference.estimateRegressionParameters();
    double[] errors = reference.estimateRegressionParametersStandardErrors();

    StraightLine line = StraightLine.through(points).orElseThrow();

    assertThat(line.intercept()).isCloseTo(parameters[0], within(1e-12));
    assertThat(line.slope()).isCloseTo(parameters[1], within(1e-12));
    assertThat(line.interceptError().orElseThrow()).isCloseTo(errors[0], within(1e-12));
    assertThat(line.slopeError().orElseThrow()).isCloseTo(errors[1], within(1e-12));
  }

  @Test
  void throughTwoPointsHasNoErrors() {
    StraightLine line = StraightLine.through(List.of(point(1, 1), point(2, 3))).orElseThrow();

    assertThat(line.slope()).isEqualTo(2);
    assertThat(line.slopeError()).isEmpty();
    assertThat(line.slopeEstimate().margin()).isEmpty();
  }
}
