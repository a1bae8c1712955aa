package sheaf.forms.card;

import sheaf.core.page.MmRect;
import sheaf.forms.draw.Picture;

/**
 * Where a shop's logo stands among the words of a card's head: over them when it is wide, before
 * them when it is not, and behind them where lines are long enough for that.
 *
 * @param logo where it is drawn
 * @param words what it leaves to the words
 */
record LogoPlace(MmRect logo, MmRect words) {

  /** Words as wide as this, in millimetres, leave room at their right. */
  private static final double ROOMY = 100;

  private static final double BEHIND_WIDTH = 44;
  private static final double BEHIND_HEIGHT = 27;
  private static final double BEFORE_WIDTH = 18;
  private static final double BEFORE_HEIGHT = 22;
  private static final double OVER_WIDTH = 52;
  private static final double OVER_HEIGHT = 9;

  /** At this many times its height, a logo over the words is larger than one before them. */
  private static final double WIDE = 2;

  private static final double GAP = 3;

  static LogoPlace of(Picture logo, MmRect room) {
    if (room.width() >= ROOMY) {
      MmRect size = fitting(logo, room.x(), room.y(), BEHIND_WIDTH, BEHIND_HEIGHT);
      double x = room.right() - GAP - size.width();
      return new LogoPlace(
          new MmRect(x, room.y(), size.width(), size.height()),
          new MmRect(room.x(), room.y(), x - GAP - room.x(), room.height()));
    }
    if (logo.aspect() >= WIDE) {
      MmRect over = fitting(logo, room.x(), room.y(), OVER_WIDTH, OVER_HEIGHT);
      return new LogoPlace(over, from(room, room.x(), over.bottom() + GAP / 2));
    }
    MmRect before = fitting(logo, room.x(), room.y() + 0.5, BEFORE_WIDTH, BEFORE_HEIGHT);
    return new LogoPlace(before, from(room, before.right() + GAP, room.y()));
  }

  private static MmRect from(MmRect room, double x, double y) {
    return new MmRect(x, y, room.right() - x, room.bottom() - y);
  }

  /** As large as a place allows, in its corner. */
  static MmRect fitting(Picture logo, double x, double y, double mostWidth, double mostHeight) {
    double width = Math.min(mostWidth, mostHeight * logo.aspect());
    return new MmRect(x, y, width, width / logo.aspect());
  }
}
