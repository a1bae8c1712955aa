package sheaf.scanner.proof;

import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/**
 * Something drawn over the sheet on a proof. What a new reader finds is shown by adding its marks
 * to {@link ProofMarks}; nothing else needs to know.
 */
sealed interface ProofMark {

  /**
   * How a line is drawn. Each means one thing, so that a proof can be told apart when it is printed
   * in black and white.
   */
  enum Style {
    /** What was found. */
    SOLID,
    /** Which aim it belongs to. */
    DOTTED,
    /** What is doubtful. */
    DASHED
  }

  /** A shaft's circle with a cross in its middle. */
  record Shaft(MmPoint axis, double diameter) implements ProofMark {}

  /** A straight line. */
  record Line(MmPoint from, MmPoint to, Style style) implements ProofMark {}

  /** A frame around a printed box. */
  record Frame(MmRect box) implements ProofMark {}

  /**
   * A word beside something, put where there is room for it.
   *
   * @param what the middle of what it names
   * @param clear how far from there it must stay, in millimetres
   * @param text the word
   */
  record Word(MmPoint what, double clear, String text) implements ProofMark {}

  /** A doubt: a dashed circle around its place, and its number in the legend. */
  record Doubt(MmPoint place, int number) implements ProofMark {}
}
