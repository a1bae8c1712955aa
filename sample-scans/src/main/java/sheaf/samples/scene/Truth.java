package sheaf.samples.scene;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sheaf.core.page.MmVector;

/**
 * What is known of a made picture of a sheet.
 *
 * @param code text of the sheet's code
 * @param behind what lay behind the sheet
 * @param dpi of the scan; 0 for a photo
 * @param colour whether it is in colour
 * @param scaleX true print scale across
 * @param scaleY true print scale down
 * @param statesDpi whether the file states its resolution
 * @param shaft diameter of the arrows in true millimetres
 * @param ticks what was ticked: field key to option
 * @param shots every hole
 * @param tears in the zones of a tear sheet, in the order in which they were shot
 * @param offset from the field points' mean to the broadheads', each from its dot, in true
 *     millimetres; empty when one of the two was not shot
 * @param expected how reading it should end: {@code read}, {@code check} or {@code refused}
 */
public record Truth(
    String code,
    String behind,
    int dpi,
    boolean colour,
    double scaleX,
    double scaleY,
    boolean statesDpi,
    double shaft,
    Map<String, String> ticks,
    List<Shot> shots,
    List<TearShot> tears,
    Optional<MmVector> offset,
    String expected) {

  /** Copies the collections. */
  public Truth {
    ticks = Collections.unmodifiableMap(new TreeMap<>(ticks));
    shots = List.copyOf(shots);
    tears = List.copyOf(tears);
  }

  /** Of a sheet without zones to tear. */
  public Truth(
      String code,
      String behind,
      int dpi,
      boolean colour,
      double scaleX,
      double scaleY,
      boolean statesDpi,
      double shaft,
      Map<String, String> ticks,
      List<Shot> shots,
      Optional<MmVector> offset,
      String expected) {
    this(
        code, behind, dpi, colour, scaleX, scaleY, statesDpi, shaft, ticks, shots, List.of(),
        offset, expected);
  }

  /** The same sheet with tears. */
  public Truth with(List<TearShot> torn) {
    return new Truth(
        code, behind, dpi, colour, scaleX, scaleY, statesDpi, shaft, ticks, shots, torn, offset,
        expected);
  }
}
