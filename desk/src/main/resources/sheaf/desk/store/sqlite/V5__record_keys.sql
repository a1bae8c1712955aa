-- Keys that took the place of a job's first one; the last counts, and those before it open nothing.
CREATE TABLE record_keys (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  job TEXT NOT NULL REFERENCES jobs (id),
  record_key TEXT NOT NULL UNIQUE,
  revision INTEGER NOT NULL REFERENCES revisions (id)
) STRICT;
CREATE INDEX record_keys_of_job ON record_keys (job, id);

CREATE TRIGGER no_UPDATE_of_record_keys BEFORE UPDATE ON record_keys
BEGIN SELECT RAISE(ABORT, 'record_keys are only ever added to'); END;
CREATE TRIGGER no_DELETE_of_record_keys BEFORE DELETE ON record_keys
BEGIN SELECT RAISE(ABORT, 'record_keys are only ever added to'); END;
