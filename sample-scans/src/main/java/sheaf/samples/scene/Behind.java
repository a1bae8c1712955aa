package sheaf.samples.scene;

import java.awt.Color;
import java.util.Locale;

/** What lies behind a shot sheet and shows through its holes. */
public enum Behind {
  /** The printed backing page. */
  BACKING(new Color(230, 0, 126)),
  /** A black lid or sheet. */
  BLACK(new Color(18, 18, 20)),
  /** The scanner's white lid: its holes are nothing but shading. */
  WHITE(new Color(244, 245, 246)),
  /** A foam target's dark face, for photos. */
  FOAM(new Color(48, 46, 44));

  private final Color colour;

  Behind(Color colour) {
    this.colour = colour;
  }

  /** Its colour before light and shadow. */
  public Color colour() {
    return colour;
  }

  /** The name in truth files. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
