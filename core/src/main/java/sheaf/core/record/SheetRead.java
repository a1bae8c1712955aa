package sheaf.core.record;

import sheaf.core.job.SheetCode;
import sheaf.core.reading.ReadingState;

/**
 * A sheet that the record was made from.
 *
 * @param code which sheet
 * @param state how sure its reading is; never refused
 */
public record SheetRead(SheetCode code, ReadingState state) {

  /** Throws when the sheet was refused. */
  public SheetRead {
    if (state == ReadingState.REFUSED) {
      throw new IllegalArgumentException("a refused sheet says nothing: " + code.text());
    }
  }
}
