package sheaf.core.group;

/** Whether two groups hit the same point, within a tolerance that was fixed beforehand. */
public enum Equivalence {
  /** The whole 95 % region lies within the tolerance. */
  SHOWN,
  /** The shift found is itself larger than the tolerance. */
  NOT_SHOWN,
  /** The shift found is within the tolerance, but the true one may not be; or nobody can say. */
  NOT_ENOUGH_ARROWS;

  /**
   * Judges an offset.
   *
   * <p>That no difference was found never shows that there is none; so sameness counts as shown
   * only when every shift that the shots leave possible is small enough: the confidence region lies
   * in the circle of the tolerance. When the true shift is as large as the tolerance or larger,
   * this wrongly says {@link #SHOWN} at most once in twenty times. (Inclusion of the confidence
   * set: R. L. Berger and J. C. Hsu, Bioequivalence trials, intersection-union tests and
   * equivalence confidence sets, 1996.)
   *
   * @param offset with its region, if there is one
   * @param toleranceMm the largest shift that counts as the same, in millimetres; finite and above
   *     zero
   * @throws IllegalArgumentException when the tolerance is out of range
   */
  public static Equivalence judge(Offset offset, double toleranceMm) {
    if (!(toleranceMm > 0) || !Double.isFinite(toleranceMm)) {
      throw new IllegalArgumentException(
          "a tolerance must be finite and above zero: " + toleranceMm);
    }
    if (offset.region().isEmpty()) {
      return NOT_ENOUGH_ARROWS;
    }
    if (offset.region().get().farthestReach() <= toleranceMm) {
      return SHOWN;
    }
    return offset.shift().length() > toleranceMm ? NOT_SHOWN : NOT_ENOUGH_ARROWS;
  }
}
