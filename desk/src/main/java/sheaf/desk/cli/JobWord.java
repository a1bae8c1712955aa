package sheaf.desk.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import sheaf.core.job.JobId;

/** A job id as a person types it. */
final class JobWord implements ITypeConverter<JobId> {

  private static final int SYMBOLS = 11;

  @Override
  public JobId convert(String typed) {
    return JobId.parse(typed).orElseThrow(() -> new TypeConversionException(whatIsWrong(typed)));
  }

  private static String whatIsWrong(String typed) {
    boolean complete = typed.replaceAll("[-\\s]", "").length() == SYMBOLS;
    return complete
        ? "job " + typed + " is mistyped: its last symbol does not fit the others"
        : "no job " + typed + ": ids look like 7G4KQ-2M8XE-0";
  }
}
