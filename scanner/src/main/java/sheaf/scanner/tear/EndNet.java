package sheaf.scanner.tear;

import sheaf.scanner.opencv.Network;

/**
 * A small convolutional net that says of each part of a tear sheet whether a tail passed or a point
 * went in there, and where exactly.
 *
 * <p>Its layers stand in {@code tear-ends.cfg}; {@code sheaf.samples.tear.EndNetStudy} taught it on
 * made tears.
 */
public final class EndNet {

  /** What it says is said of squares so wide, in millimetres. */
  public static final int CELL_MM = 2;

  /** Planes of what it says; see {@link EndMap}. */
  public static final int PLANES = 14;

  /** Ends are seldom: taken from the log odds that the net says of an end. */
  public static final float SELDOM = 4;

  /** The log of an end's spread in millimetres lies between this and its opposite. */
  public static final float MOST_LOG = 2.5f;

  private EndNet() {}

  /** Made when first asked for. */
  private static final class Taught {
    private static final Network NET =
        Network.darknet(
            Network.file(EndNet.class, "tear-ends.cfg"),
            Network.file(EndNet.class, "tear-ends.weights"));
  }

  /** What it says of a sheet. */
  static EndMap look(TearPicture picture) {
    byte[] tones = picture.tones();
    float[] values = new float[tones.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = (tones[i] & 0xFF) / (float) TearPicture.PAPER - 1;
    }
    int[] shape = {1, TearPicture.PLANES, picture.rows(), picture.columns()};
    float[] planes = Taught.NET.run(shape, values);
    int cell = CELL_MM * TearPicture.PER_MM;
    return new EndMap(
        picture.left(), picture.top(), picture.columns() / cell, picture.rows() / cell, planes);
  }
}
