package sheaf.forms.draw;

import sheaf.core.page.MmRect;

/** A text is longer than the room it was given: a fault of the layout, found by its tests. */
public final class TextDoesNotFitException extends RuntimeException {

  private static final long serialVersionUID = 1;

  TextDoesNotFitException(String text, MmRect room) {
    super("\"%s\" does not fit %.1f x %.1f mm".formatted(text, room.width(), room.height()));
  }
}
