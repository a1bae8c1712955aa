package sheaf.desk.work;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.answer.Answers;
import sheaf.core.answer.Question;
import sheaf.core.answer.Questions;
import sheaf.core.job.JobId;
import sheaf.core.reading.PageReading;
import sheaf.core.result.JobSummary;
import sheaf.desk.store.Store;

/**
 * A job's sheets as the machine read them, and with what people said.
 *
 * @param machine without any answers
 * @param said with all of them
 */
public record SheetsOfJob(JobSummary machine, JobSummary said) {

  /** Looks them up. */
  public static SheetsOfJob of(JobId job, Store store) {
    List<PageReading> readings = store.readings(job);
    Answers answers = store.answers(job);
    return new SheetsOfJob(JobSummary.of(job, readings), JobSummary.of(job, readings, answers));
  }

  /** What is left to ask, sheet by sheet. */
  public List<Question> questions() {
    List<Question> questions = new ArrayList<>();
    for (int i = 0; i < machine.sheets().size(); i++) {
      questions.addAll(Questions.of(machine.sheets().get(i), said.sheets().get(i)));
    }
    return questions;
  }
}
