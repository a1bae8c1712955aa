package sheaf.desk.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import sheaf.desk.file.OutputFile;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;

/**
 * The one place where an exception becomes a sentence and an exit status; nobody ever sees a stack
 * trace.
 *
 * @param console takes the sentence
 * @param home where the trace of a fault of our own is kept
 */
record Endings(Console console, Supplier<HomeFolder> home)
    implements IParameterExceptionHandler, IExecutionExceptionHandler {

  @Override
  public int handleParseException(ParameterException e, String[] args) {
    String command = e.getCommandLine().getCommandSpec().qualifiedName();
    console.say("sheaf: " + inWords(e));
    console.say("Try: " + command + " --help");
    return ExitStatus.MISUSE.number();
  }

  private static String inWords(ParameterException e) {
    if (e instanceof UnmatchedArgumentException unmatched) {
      String known = String.join("' or '", unmatched.getSuggestions());
      String kind = unmatched.isUnknownOption() ? "There is no option '" : "Not understood: '";
      return kind
          + unmatched.getUnmatched().get(0)
          + (known.isEmpty() ? "'." : "'. Did you mean '" + known + "'?");
    }
    if (e.getCause() instanceof TypeConversionException wrong) {
      return e.getArgSpec() instanceof OptionSpec option
          ? option.longestName() + ": " + wrong.getMessage()
          : wrong.getMessage();
    }
    return e.getMessage();
  }

  @Override
  public int handleExecutionException(Exception e, CommandLine command, ParseResult result) {
    if (e instanceof Trouble trouble) {
      trouble.getMessage().lines().forEach(sentence -> console.say("sheaf: " + sentence));
      return trouble.status().number();
    }
    console.say("sheaf: a fault in Sheaf itself stopped it: " + e + ". " + keep(e));
    return ExitStatus.ENVIRONMENT.number();
  }

  private String keep(Exception fault) {
    StringWriter trace = new StringWriter();
    fault.printStackTrace(new PrintWriter(trace, true));
    Path file = home.get().path().resolve("last-fault.txt");
    try {
      OutputFile.folder(home.get().path());
      OutputFile.write(file, out -> out.write(trace.toString().getBytes(StandardCharsets.UTF_8)));
      return "Please report it with the file " + file + ".";
    } catch (Trouble e) {
      return "Please report it.";
    }
  }
}
