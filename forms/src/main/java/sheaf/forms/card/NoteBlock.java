package sheaf.forms.card;

import java.io.IOException;
import java.util.Base64;
import sheaf.core.page.MmRect;
import sheaf.core.reading.NotePicture;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.Picture;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/** What somebody wrote by hand, as large as it is or as fits. */
record NoteBlock(NotePicture note) implements Block {

  /** Higher than this, in millimetres, a note is made smaller: a card has other things to say. */
  private static final double HIGHEST = 60;

  private static final double BELOW = 1;

  @Override
  public double height(Typeface typeface, double width) {
    return note.height() * scale(width) + BELOW;
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    double scale = scale(room.width());
    MmRect place = new MmRect(room.x(), room.y(), note.width() * scale, note.height() * scale);
    Picture picture = Picture.of(Base64.getDecoder().decode(note.png()));
    pen.picture(document, "Handwritten notes, kept as a picture of the card.", place, picture);
  }

  private double scale(double width) {
    return Math.min(1, Math.min(width / note.width(), HIGHEST / note.height()));
  }
}
