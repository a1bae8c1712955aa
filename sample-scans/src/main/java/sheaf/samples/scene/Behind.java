package sheaf.samples.scene;

import java.awt.Color;
import java.util.Locale;
import sheaf.forms.Backing;

/** What lies behind a shot sheet and shows through its holes. */
public enum Behind {
  /** The printed backing page. */
  BACKING(Backing.COLOUR),
  /** A black lid or sheet. */
  BLACK(new Color(20, 20, 22)),
  /** A grey sheet or a worn lid. */
  GREY(new Color(118, 119, 121)),
  /** The scanner's white lid: its holes are nothing but shading. */
  WHITE(new Color(244, 245, 246)),
  /** A foam target's dark face, for photos. */
  FOAM(new Color(40, 39, 40)),
  /** A wooden board, for photos. */
  WOOD(new Color(176, 128, 76)),
  /** Nothing but bright sky, as behind an open frame: its holes are as bright as the paper. */
  SKY(new Color(226, 236, 250));

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
