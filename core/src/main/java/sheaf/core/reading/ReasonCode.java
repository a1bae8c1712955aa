package sheaf.core.reading;

import java.util.Locale;

/** What can be said of a page besides its values; each code decides how the reading ends. */
public enum ReasonCode {
  /** The file has no content. */
  EMPTY_FILE(ReadingState.REFUSED),
  /** The file is no picture and no PDF. */
  NOT_A_PICTURE(ReadingState.REFUSED),
  /** The file breaks off or cannot be decoded. */
  DAMAGED_FILE(ReadingState.REFUSED),
  /** The picture has more pixels than a sheet can need. */
  TOO_LARGE(ReadingState.REFUSED),
  /** The PDF asks for a password. */
  ENCRYPTED_PDF(ReadingState.REFUSED),
  /** A PDF page holds no scanned picture. */
  PDF_WITHOUT_PICTURE(ReadingState.REFUSED),
  /** No register mark was seen. */
  NO_SHEET(ReadingState.REFUSED),
  /** Too few register marks were seen, or they do not span the sheet. */
  TOO_FEW_MARKS(ReadingState.REFUSED),
  /** Marks of two sheets were seen, or one mark twice. */
  TWO_SHEETS(ReadingState.REFUSED),
  /** The picture is mirrored, or shows the sheet from behind. */
  MIRRORED(ReadingState.REFUSED),
  /** Dark and light are exchanged. */
  NEGATIVE(ReadingState.REFUSED),
  /** Something that is to be read lies beyond the picture's edge. */
  PARTLY_OUTSIDE(ReadingState.REFUSED),
  /** The marks do not lie on one flat sheet. */
  NOT_FLAT(ReadingState.REFUSED),
  /** Too few pixels for each millimetre, or too blurred. */
  TOO_COARSE(ReadingState.REFUSED),
  /** Neither code could be read. */
  CODE_UNREADABLE(ReadingState.REFUSED),
  /** The code names another kind of sheet than the marks, or the two codes differ. */
  CODE_AGAINST_MARKS(ReadingState.REFUSED),
  /** The code names a layout that this version does not know. */
  UNKNOWN_LAYOUT(ReadingState.REFUSED),
  /** The reader itself failed at this page. */
  READER_FAULT(ReadingState.REFUSED),

  /** The sheet is curled or tilted more than can surely be taken out. */
  CURLED(ReadingState.CHECK),
  /** Printed words cannot be seen: the sheet is folded over, covered or torn off there. */
  PRINT_HIDDEN(ReadingState.CHECK),
  /** The sheet is larger one way than the other by more than a printer does. */
  SCALE_UNEVEN(ReadingState.CHECK),
  /** The number of holes differs from the arrows ticked as shot. */
  ARROWS_AGAINST_HOLES(ReadingState.CHECK),
  /** A hole's shape says another head than its dot, or than what is ticked. */
  HEAD_AGAINST_DOT(ReadingState.CHECK),
  /** A hole's shape does not tell the head. */
  HEAD_UNSURE(ReadingState.CHECK),
  /** Something may or may not be a hole. */
  HOLE_UNSURE(ReadingState.CHECK),
  /** A hole's centre is too uncertain. */
  CENTRE_UNSURE(ReadingState.CHECK),
  /** A hole is about as far from one dot as from the other, or near the border of a band. */
  AIM_UNSURE(ReadingState.CHECK),
  /** A zone that asks for one shot was hit by more. */
  TWO_SHOTS(ReadingState.CHECK),
  /** Something in a zone may or may not be a tear. */
  TEAR_UNSURE(ReadingState.CHECK),
  /** It is not clear which end of a tear the point made. */
  TEAR_ENDS_UNSURE(ReadingState.CHECK),
  /** An end of a tear is too uncertain. */
  TEAR_END_UNCLEAR(ReadingState.CHECK),
  /** Tears are read on trial: a person must look at each that was found. */
  TEAR_ON_TRIAL(ReadingState.CHECK),
  /** A tick is neither clearly there nor clearly not. */
  TICK_UNSURE(ReadingState.CHECK),
  /** Two boxes are ticked where one answer is asked for. */
  TWO_TICKS(ReadingState.CHECK),
  /** A handwritten number cannot be read, or not surely. */
  WRITTEN_NUMBER(ReadingState.CHECK),
  /** A number is beyond what is usual, or does not go together with others. */
  NUMBER_IMPLAUSIBLE(ReadingState.CHECK),
  /** A sheet was scanned again and no longer shows what it surely showed. */
  VALUE_GONE(ReadingState.CHECK),
  /** A sheet surely says something else than a person said it does. */
  ANSWER_AGAINST_SHEET(ReadingState.CHECK),

  /** The printer did not keep the size; the values are corrected for it. */
  PRINT_SCALE(ReadingState.READ),
  /** A sheet was scanned again, and surely says something else than before. */
  VALUE_REVISED(ReadingState.READ);

  private final ReadingState ending;

  ReasonCode(ReadingState ending) {
    this.ending = ending;
  }

  /** How a reading with this reason ends, unless another reason is worse. */
  public ReadingState ending() {
    return ending;
  }

  /** The code in JSON. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
