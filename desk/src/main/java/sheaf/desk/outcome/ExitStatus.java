package sheaf.desk.outcome;

import sheaf.core.reading.ReadingState;

/**
 * How a command ended, as its exit status tells a program.
 *
 * <p>In the order of what counts when several apply, the least first.
 */
public enum ExitStatus {
  /** All went well; every page was read. */
  OK(0),
  /** Some page needs a person's look. */
  CHECK(3),
  /** Some page or card was refused. */
  REFUSED(4),
  /** Something asked for is not there or makes no sense. */
  MISUSE(2),
  /** The machine would not do it: a full disk, a folder that cannot be written, a broken store. */
  ENVIRONMENT(1);

  private final int number;

  ExitStatus(int number) {
    this.number = number;
  }

  /** The number handed to the operating system. */
  public int number() {
    return number;
  }

  /** The one of two that counts. */
  public ExitStatus or(ExitStatus other) {
    return compareTo(other) >= 0 ? this : other;
  }

  /** What a page's state makes of a command. */
  public static ExitStatus of(ReadingState state) {
    return switch (state) {
      case READ -> OK;
      case CHECK -> CHECK;
      case REFUSED -> REFUSED;
    };
  }
}
