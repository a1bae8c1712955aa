package sheaf.forms.card;

import sheaf.forms.draw.Part;

/** A part that several blocks share, such as the table that rows belong to. */
final class OnePart {

  private final String type;
  private Part part;

  OnePart(String type) {
    this.type = type;
  }

  /** The part, added to the document when the first of its blocks is drawn. */
  Part in(Part document) {
    if (part == null) {
      part = document.add(type);
    }
    return part;
  }
}
