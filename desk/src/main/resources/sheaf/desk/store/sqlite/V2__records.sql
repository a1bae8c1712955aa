-- Records that came with finished cards, each beside the file that carried it.
CREATE TABLE records (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  original TEXT NOT NULL REFERENCES originals (sha256),
  job TEXT NOT NULL REFERENCES jobs (id),
  imported_at TEXT NOT NULL,
  imported_by TEXT NOT NULL,
  record TEXT NOT NULL
) STRICT;

CREATE INDEX records_of_job ON records (job, id);

CREATE TRIGGER no_UPDATE_of_records BEFORE UPDATE ON records
BEGIN SELECT RAISE(ABORT, 'records are only ever added to'); END;
CREATE TRIGGER no_DELETE_of_records BEFORE DELETE ON records
BEGIN SELECT RAISE(ABORT, 'records are only ever added to'); END;
