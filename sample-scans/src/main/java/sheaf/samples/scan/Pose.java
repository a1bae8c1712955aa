package sheaf.samples.scan;

/**
 * Where a camera stands before a sheet, and which way it looks.
 *
 * @param tilt between the camera's axis and the sheet's normal, in degrees
 * @param toward direction of the tilt in the picture, in degrees
 * @param roll of the sheet in the picture, in degrees, clockwise
 * @param fill share of the picture that the sheet takes up in the tighter direction; above 1 it
 *     reaches out
 * @param aimX millimetres from the sheet's middle to where the camera looks, to the right
 * @param aimY the same, down
 */
public record Pose(double tilt, double toward, double roll, double fill, double aimX, double aimY) {

  /** Nearest and farthest distance that is tried, in millimetres. */
  private static final double NEAREST = 80;

  private static final double FARTHEST = 4000;

  /** Rows: the picture's right, its down, and the way the camera looks, seen from the sheet. */
  double[][] axes() {
    double t = Math.toRadians(tilt);
    double a = Math.toRadians(toward);
    double r = Math.toRadians(roll);
    double[] tiltAxis = {Math.cos(a), Math.sin(a), 0};
    double[][] axes = new double[3][3];
    for (int i = 0; i < 3; i++) {
      double[] unit = {i == 0 ? 1 : 0, i == 1 ? 1 : 0, i == 2 ? 1 : 0};
      double[] turned = turned(unit, tiltAxis, t);
      axes[0][i] = turned[0] * Math.cos(r) - turned[1] * Math.sin(r);
      axes[1][i] = turned[0] * Math.sin(r) + turned[1] * Math.cos(r);
      axes[2][i] = turned[2];
    }
    return axes;
  }

  /** Turns a vector about an axis (Rodrigues' formula). */
  private static double[] turned(double[] v, double[] axis, double angle) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    double dot = (axis[0] * v[0] + axis[1] * v[1] + axis[2] * v[2]) * (1 - cos);
    return new double[] {
      v[0] * cos + (axis[1] * v[2] - axis[2] * v[1]) * sin + axis[0] * dot,
      v[1] * cos + (axis[2] * v[0] - axis[0] * v[2]) * sin + axis[1] * dot,
      v[2] * cos + (axis[0] * v[1] - axis[1] * v[0]) * sin + axis[2] * dot
    };
  }

  /** Where the camera stands, in millimetres from the sheet's middle; z leads into the board. */
  double[] place(double width, double height, double sheetWidth, double sheetHeight, double focal) {
    double[][] axes = axes();
    double near = NEAREST;
    double far = FARTHEST;
    while (far - near > 0.5) {
      double middle = (near + far) / 2;
      double[] camera = back(axes, middle);
      if (reach(axes, camera, width, height, sheetWidth, sheetHeight, focal) > fill) {
        near = middle;
      } else {
        far = middle;
      }
    }
    return back(axes, far);
  }

  private double[] back(double[][] axes, double distance) {
    return new double[] {
      aimX - distance * axes[2][0], aimY - distance * axes[2][1], -distance * axes[2][2]
    };
  }

  /** How far out the sheet's farthest corner is seen, 1 at the picture's edge. */
  private static double reach(
      double[][] axes,
      double[] camera,
      double width,
      double height,
      double sheetWidth,
      double sheetHeight,
      double focal) {
    double reach = 0;
    for (int corner = 0; corner < 4; corner++) {
      double x = (corner % 2 - 0.5) * sheetWidth - camera[0];
      double y = (corner / 2 - 0.5) * sheetHeight - camera[1];
      double z = -camera[2];
      double ahead = axes[2][0] * x + axes[2][1] * y + axes[2][2] * z;
      if (ahead <= 1) {
        return Double.MAX_VALUE;
      }
      double right = focal * (axes[0][0] * x + axes[0][1] * y + axes[0][2] * z) / ahead;
      double down = focal * (axes[1][0] * x + axes[1][1] * y + axes[1][2] * z) / ahead;
      reach = Math.max(reach, Math.max(Math.abs(right) / width, Math.abs(down) / height) * 2);
    }
    return reach;
  }
}
