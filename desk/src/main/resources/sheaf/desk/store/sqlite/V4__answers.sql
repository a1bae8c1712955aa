-- What people said of a job's sheets and values, as JSON; of one thing the last answer counts.
CREATE TABLE answers (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  job TEXT NOT NULL REFERENCES jobs (id),
  answer TEXT NOT NULL,
  revision INTEGER NOT NULL REFERENCES revisions (id)
) STRICT;
CREATE INDEX answers_of_job ON answers (job, id);

CREATE TRIGGER no_UPDATE_of_answers BEFORE UPDATE ON answers
BEGIN SELECT RAISE(ABORT, 'answers are only ever added to'); END;
CREATE TRIGGER no_DELETE_of_answers BEFORE DELETE ON answers
BEGIN SELECT RAISE(ABORT, 'answers are only ever added to'); END;
