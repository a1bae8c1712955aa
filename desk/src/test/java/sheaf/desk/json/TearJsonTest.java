package sheaf.desk.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.TearReading;

class TearJsonTest {

  private static final TearReading TEAR =
      new TearReading(2, new MmPoint(60, 70), 0.9, new MmPoint(90, 30), 1.1, 3, 0.98);

  @Test
  void aTearTellsBothEndsAndItsLength() {
    JsonNode tree = TearJson.tree(TEAR, Optional.empty());
    assertThat(tree.toString())
        .startsWith(
            "{\"zone\":2,\"point\":{\"x\":60.0,\"y\":70.0},\"tail\":{\"x\":90.0,\"y\":30.0},\"length\":50.0");
    assertThat(TearJson.parse(tree)).isEqualTo(TEAR);
  }

  @Test
  void itsLengthIsCorrectedForThePrintScale() {
    JsonNode tree = TearJson.tree(TEAR, Optional.of(new PrintScale(0.9, 0.9)));
    assertThat(tree.get("length").asDouble()).isEqualTo(45.0);
  }

  @Test
  void aBulletHoleHasTheLengthZero() {
    MmPoint hole = new MmPoint(60, 70);
    TearReading bullet = new TearReading(1, hole, 0.9, hole, 0.9, 0, 0.9);
    JsonNode tree = TearJson.tree(bullet, Optional.empty());
    assertThat(tree.get("length").asDouble()).isZero();
    assertThat(tree.get("vanes").isNull()).isTrue();
    assertThat(TearJson.parse(tree)).isEqualTo(bullet);
  }
}
