package sheaf.desk.outcome;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Locale;
import java.util.Objects;

/**
 * Ends a command with one sentence for the person at the desk.
 *
 * <p>Its message is that sentence: what is wrong and, where it helps, what to do. Where several
 * things are wrong with one file, there is a sentence for each, on a line of its own.
 */
public final class Trouble extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final ExitStatus status;

  private Trouble(ExitStatus status, String sentence, Throwable cause) {
    super(sentence, cause);
    this.status = status;
  }

  /** Something asked for is not there or makes no sense. */
  public static Trouble misuse(String sentence) {
    return new Trouble(ExitStatus.MISUSE, sentence, null);
  }

  /** A paper or a file that says nothing to trust, or that would undo what is known. */
  public static Trouble refused(String sentence) {
    return new Trouble(ExitStatus.REFUSED, sentence, null);
  }

  /** The machine would not do it. */
  public static Trouble environment(String sentence) {
    return new Trouble(ExitStatus.ENVIRONMENT, sentence, null);
  }

  /** The machine would not do it, and something else says why. */
  public static Trouble environment(String sentence, Exception cause) {
    return new Trouble(ExitStatus.ENVIRONMENT, sentence, cause);
  }

  /** A file or folder that cannot be written. */
  public static Trouble cannotWrite(Object what, IOException why) {
    return environment(what + " cannot be written: " + inWords(why) + ".", why);
  }

  /** A file that is there but cannot be read. */
  public static Trouble cannotRead(Object what, IOException why) {
    return environment(what + " cannot be read: " + inWords(why) + ".", why);
  }

  /** How the command ends. */
  public ExitStatus status() {
    return status;
  }

  /** The reason of a failure of the file system, without the name of the file. */
  public static String inWords(IOException why) {
    if (why instanceof NoSuchFileException) {
      return "its folder is not there";
    }
    if (why instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (why instanceof NotDirectoryException || why instanceof FileAlreadyExistsException) {
      return "a file is in the way where a folder must be";
    }
    String reason = why instanceof FileSystemException f ? f.getReason() : why.getMessage();
    return plain(Objects.requireNonNullElse(reason, why.getClass().getSimpleName()));
  }

  private static String plain(String reason) {
    if (reason.startsWith("No space left")) {
      return "the disk is full";
    }
    if (reason.startsWith("Not a directory")) {
      return "a file is in the way where a folder must be";
    }
    return reason.substring(0, 1).toLowerCase(Locale.ROOT) + reason.substring(1);
  }
}
