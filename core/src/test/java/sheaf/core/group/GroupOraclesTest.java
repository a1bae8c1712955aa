package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.FDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.correlation.Covariance;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import sheaf.core.Oracles;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;

/** Groups and lines against published values; the sources are in {@code oracles.json}. */
class GroupOraclesTest {

  private static final Percentage TEN_DIGITS = Percentage.withPercentage(1e-8);

  private static Percentage percent(double percent) {
    return Percentage.withPercentage(percent);
  }

  @Nested
  class Differences {

    @Test
    void ofGroupsOfThreeAndSixAreStevens() {
      Hotelling test =
          Hotelling.twoSample(
                  Shots.at(1, 3, 3, 7, 2, 2), Shots.at(4, 6, 6, 8, 6, 8, 5, 10, 5, 10, 4, 6))
              .orElseThrow();
      assertThat(test.t2()).isCloseTo(Oracles.expected("H1", "T2"), within(1e-12));
      assertThat(test.f()).isCloseTo(Oracles.expected("H1", "F"), within(1e-12));
      assertThat(test.pValue()).isCloseTo(Oracles.expected("H1", "p"), within(1e-12));
      assertThat(test.denominatorFreedom())
          .isEqualTo(Oracles.expected("H1").get("df").get(1).intValue());
    }

    @Test
    void fromSumsOfSquaresAreAsPrinted() {
      sheaf.core.group.Covariance within4 = new sheaf.core.group.Covariance(21.75, 40.25, 77.5);
      Hotelling test = Hotelling.twoSample(new MmVector(-4.25, -9.5), within4, 4, 4).orElseThrow();
      // Printed to three digits.
      assertThat(test.t2()).isCloseTo(Oracles.expected("H2", "T2"), within(0.01));
      assertThat(test.f()).isCloseTo(Oracles.expected("H2", "F"), within(0.01));
      double wilks = 1 / (1 + test.t2() / 6);
      assertThat(wilks).isCloseTo(Oracles.expected("H2", "wilks"), within(0.001));
    }

    @Test
    void ofOneGroupFromAPlaceAreJohnsonsAndWicherns() {
      Hotelling test =
          Hotelling.oneSample(Shots.at(2, 12, 8, 9, 6, 9, 8, 10), new MmPoint(7, 11)).orElseThrow();
      assertThat(Oracles.expected("H3").get("T2").textValue()).isEqualTo("150/11");
      assertThat(test.t2()).isCloseTo(150 / 11.0, within(1e-12));
      double critical = 3 * Hotelling.fQuantile(test.denominatorFreedom(), 0.05);
      assertThat(critical).isCloseTo(Oracles.expected("H3", "crit05"), within(1e-12));
    }

    @Test
    void haveAnEllipseWithTheHalfAxesOfTheSoapExample() {
      Ellipse region =
          Hotelling.twoSample(
                  new MmVector(0, 0), new sheaf.core.group.Covariance(2, 1, 5).times(98), 50, 50)
              .orElseThrow()
              .region();
      JsonNode axes = Oracles.expected("H4");
      assertThat(region.semiMajor()).isCloseTo(axes.get(0).doubleValue(), within(0.005));
      assertThat(region.semiMinor()).isCloseTo(axes.get(1).doubleValue(), within(0.005));
    }

    /**
     * Three measures a subject are not ours, but T² does not change when only the plane is looked
     * at that holds the direction in which the groups differ most (R. A. Fisher's discriminant).
     * That direction is taken from Commons Math, T² from us, and its p-value from Commons Math
     * again.
     */
    @Test
    void inThreeDimensionsAreSeenInThePlaneOfTheDiscriminant() {
      double[][] first = SpmExample.first();
      double[][] second = SpmExample.second();
      RealVector w = SpmExample.discriminant(first, second);
      double t2 = Hotelling.twoSample(projected(first, w), projected(second, w)).orElseThrow().t2();
      assertThat(t2).isCloseTo(Oracles.expected("H5", "T2"), within(1e-6));
      double f = t2 * 34 / (3 * 36);
      double p = 1 - new FDistribution(null, 3, 34).cumulativeProbability(f);
      assertThat(p).isCloseTo(Oracles.expected("H5", "p"), within(1e-6));
    }

    private Group projected(double[][] rows, RealVector onto) {
      List<MmPoint> places = new ArrayList<>();
      for (double[] row : rows) {
        places.add(new MmPoint(onto.dotProduct(new ArrayRealVector(row)), row[1]));
      }
      return new Group(places);
    }

    @Test
    void ofThreeAndFourAreExactly120Over31() {
      Group first = Shots.at(3, 3, 1, 6, 2, 3);
      Group second = Shots.at(2, 3, 5, 1, 3, 1, 2, 3);
      sheaf.core.group.Covariance pooled =
          sheaf.core.group.Covariance.scatter(first)
              .plus(sheaf.core.group.Covariance.scatter(second))
              .times(1 / 5.0);
      JsonNode sp = Oracles.expected("H6").get("Sp");
      assertThat(pooled.xx()).isCloseTo(sp.get(0).get(0).doubleValue(), within(1e-12));
      assertThat(pooled.xy()).isCloseTo(sp.get(0).get(1).doubleValue(), within(1e-12));
      assertThat(pooled.yy()).isCloseTo(sp.get(1).get(1).doubleValue(), within(1e-12));
      assertThat(Hotelling.twoSample(first, second).orElseThrow().t2())
          .isCloseTo(Oracles.expected("H6", "T2"), within(1e-12));
    }
  }

  @Nested
  class Lines {

    @Test
    void ofNorrisAreAsCertified() {
      List<List<Double>> rows = Oracles.rows(getClass(), "nist_norris.csv");
      StraightLine line =
          StraightLine.through(
                  rows.stream()
                      .map(row -> new StraightLine.Point(row.get(1), row.get(0), 1))
                      .toList())
              .orElseThrow();
      assertThat(line.intercept()).isCloseTo(Oracles.expected("N1", "B0"), TEN_DIGITS);
      assertThat(line.slope()).isCloseTo(Oracles.expected("N1", "B1"), TEN_DIGITS);
      assertThat(line.interceptError()).hasValueCloseTo(Oracles.expected("N1", "seB0"), TEN_DIGITS);
      assertThat(line.slopeError()).hasValueCloseTo(Oracles.expected("N1", "seB1"), TEN_DIGITS);
      double spread = 0;
      double mean = rows.stream().mapToDouble(row -> row.get(1)).average().orElseThrow();
      for (List<Double> row : rows) {
        spread += (row.get(1) - mean) * (row.get(1) - mean);
      }
      assertThat(line.slopeError().orElseThrow() * Math.sqrt(spread))
          .isCloseTo(Oracles.expected("N1", "rsd"), TEN_DIGITS);
    }

    /** Sen's own example, with the normal deviate of the 93 % that SciPy's test takes. */
    @Test
    void byTheMedianOfSlopesAreSens() {
      double[] x = {1, 2, 3, 4, 10, 12, 18};
      double[] y = {9, 15, 19, 20, 45, 55, 78};
      RobustLine line =
          RobustLine.through(
                  IntStream.range(0, 7)
                      .mapToObj(i -> new StraightLine.Point(x[i], y[i], 1))
                      .toList())
              .orElseThrow();
      double deviate = 1.8119106729525978;
      JsonNode limits = Oracles.expected("R1").get("ci93");
      assertThat(line.slope()).isEqualTo(Oracles.expected("R1", "slope"), within(1e-12));
      assertThat(line.low(deviate)).isEqualTo(limits.get(0).doubleValue(), within(1e-12));
      assertThat(line.high(deviate)).isEqualTo(limits.get(1).doubleValue(), within(1e-12));
      assertThat(line.intercept())
          .isEqualTo(Oracles.expected("R1", "intercept_separate"), within(1e-12));
    }

    @Test
    void withErrorsInBothAreYorks() {
      LineOfBoth line =
          LineOfBoth.through(
                  Oracles.rows(getClass(), "pearson_york.csv").stream()
                      .map(
                          row ->
                              new LineOfBoth.Point(
                                  row.get(0),
                                  row.get(2),
                                  1 / Math.sqrt(row.get(1)),
                                  1 / Math.sqrt(row.get(3))))
                      .toList())
              .orElseThrow();
      assertThat(line.intercept()).isCloseTo(Oracles.expected("R2", "a"), within(1e-8));
      assertThat(line.slope()).isCloseTo(Oracles.expected("R2", "b"), within(1e-8));
      assertThat(line.interceptError()).isCloseTo(Oracles.expected("R2", "sa"), within(1e-8));
      assertThat(line.slopeError()).isCloseTo(Oracles.expected("R2", "sb"), within(1e-8));
      assertThat(line.reducedChiSquare())
          .hasValueCloseTo(Oracles.expected("R2", "chi2red"), within(1e-8));
    }

    @Test
    void withEqualErrorsInBothAreOrthogonal() {
      LineOfBoth line =
          LineOfBoth.through(
                  Oracles.rows(getClass(), "pearson_york.csv").stream()
                      .map(row -> new LineOfBoth.Point(row.get(0), row.get(2), 1, 1))
                      .toList())
              .orElseThrow();
      assertThat(line.slope()).isCloseTo(Oracles.expected("R3", "b"), within(1e-9));
      assertThat(line.intercept()).isCloseTo(Oracles.expected("R3", "a"), within(1e-9));
    }
  }

  @Nested
  class MeansAndDeviations {

    private void assertMeanAndDeviation(String id, Group group, Percentage close) {
      assertThat(group.centre().x()).isCloseTo(Oracles.expected(id, "mean"), percent(1e-13));
      double variance = sheaf.core.group.Covariance.scatter(group).xx() / (group.size() - 1);
      assertThat(Math.sqrt(variance)).isCloseTo(Oracles.expected(id, "sd"), close);
    }

    @Test
    void ofThreeLargeNumbersAreExact() {
      assertMeanAndDeviation("N4", Shots.at(10000001, 0, 10000003, 0, 10000002, 0), percent(1e-13));
    }

    /** Exposes a sum of squares from which the square of the sum is taken. */
    @Test
    void ofAThousandLargeNumbersKeepTheirDigits() {
      List<MmPoint> numbers = new ArrayList<>(List.of(new MmPoint(10000000.2, 0)));
      for (int i = 0; i < 500; i++) {
        numbers.add(new MmPoint(10000000.1, 0));
        numbers.add(new MmPoint(10000000.3, 0));
      }
      assertMeanAndDeviation("N5", new Group(numbers), percent(1e-6));
    }

    @Test
    void ofMichelsonsSpeedOfLightAreAsCertified() {
      List<MmPoint> numbers =
          Oracles.rows(getClass(), "nist_michelso.csv").stream()
              .map(row -> new MmPoint(row.get(0), 0))
              .toList();
      assertThat(numbers).hasSize(100);
      assertMeanAndDeviation("N6", new Group(numbers), percent(1e-10));
    }
  }

  @Nested
  class EnclosingCircles {

    private void assertCircle(String id, double x, double y, Group group) {
      EnclosingCircle circle = EnclosingCircle.of(group);
      assertThat(circle.radius()).isCloseTo(Oracles.expected(id, "r"), within(1e-12));
      assertThat(circle.centre().distanceTo(new MmPoint(x, y))).isCloseTo(0, within(1e-12));
    }

    @Test
    void areThoseOfGeometry() {
      assertCircle("M1", 0.5, 0.5, Shots.at(0, 0, 1, 0, 0, 1, 1, 1));
      assertCircle("M2", 1.5, 2, Shots.at(0, 0, 3, 0, 0, 4));
      double height = Math.sqrt(3) / 2;
      assertCircle("M3", 0.5, height / 3, Shots.at(0, 0, 1, 0, 0.5, height));
      assertCircle("M4", 5, 0, Shots.at(0, 0, 10, 0, 5, 1));
    }
  }

  /** Data of the spm1d project, file hotellings2.py: twenty and eighteen subjects. */
  private static final class SpmExample {

    private static double[][] first() {
      return columns(
          new double[] {
            38.4, 36.8, 40.0, 39.8, 38.6, 39.1, 38.9, 36.8, 40.4, 39.4, 38.0, 38.6, 40.1, 38.1,
            37.2, 39.5, 37.3, 39.1, 39.9, 37.8
          },
          new double[] {
            73, 85, 58, 80, 68, 52, 79, 100, 64, 53, 70, 75, 48, 57, 78, 65, 77, 67, 52, 68
          },
          new double[] {
            18, 14, 20, 20, 25, 27, 26, 8, 21, 22, 15, 14, 28, 22, 16, 18, 13, 16, 10, 13
          });
    }

    private static double[][] second() {
      return columns(
          new double[] {
            40.9, 39.5, 39.4, 38.2, 39.7, 38.9, 38.6, 39.9, 41.3, 38.1, 39.6, 37.1, 39.5, 40.3,
            41.5, 39.3, 37.6, 40.6
          },
          new double[] {54, 75, 57, 71, 65, 49, 58, 52, 62, 57, 78, 92, 63, 52, 46, 56, 86, 48},
          new double[] {14, 18, 24, 24, 22, 30, 25, 17, 18, 20, 19, 15, 13, 25, 27, 14, 16, 21});
    }

    private static double[][] columns(double[] a, double[] b, double[] c) {
      return new Array2DRowRealMatrix(new double[][] {a, b, c}).transpose().getData();
    }

    private static RealVector discriminant(double[][] first, double[][] second) {
      RealMatrix pooled =
          new Covariance(first)
              .getCovarianceMatrix()
              .scalarMultiply(first.length - 1)
              .add(new Covariance(second).getCovarianceMatrix().scalarMultiply(second.length - 1));
      RealVector difference = mean(second).subtract(mean(first));
      return new LUDecomposition(pooled).getSolver().solve(difference);
    }

    private static RealVector mean(double[][] rows) {
      RealVector sum = new ArrayRealVector(3);
      for (double[] row : rows) {
        sum = sum.add(new ArrayRealVector(row));
      }
      return sum.mapDivide(rows.length);
    }
  }
}
