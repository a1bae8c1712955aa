-- What was read: files, their pages, and every reading ever made of them.
CREATE TABLE originals (
  sha256 TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  bytes INTEGER NOT NULL,
  kept_at TEXT NOT NULL
) STRICT;

CREATE TABLE jobs (
  id TEXT PRIMARY KEY,
  record_key TEXT NOT NULL UNIQUE,
  opened_at TEXT NOT NULL
) STRICT;

CREATE TABLE pages (
  id INTEGER PRIMARY KEY,
  original TEXT NOT NULL REFERENCES originals (sha256),
  number INTEGER NOT NULL,
  UNIQUE (original, number)
) STRICT;

CREATE TABLE readings (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  page INTEGER NOT NULL REFERENCES pages (id),
  job TEXT REFERENCES jobs (id),
  made_at TEXT NOT NULL,
  made_by TEXT NOT NULL,
  reading TEXT NOT NULL
) STRICT;

CREATE INDEX readings_of_page ON readings (page, id);
CREATE INDEX readings_of_job ON readings (job, id);

CREATE TRIGGER no_UPDATE_of_originals BEFORE UPDATE ON originals
BEGIN SELECT RAISE(ABORT, 'originals are only ever added to'); END;
CREATE TRIGGER no_DELETE_of_originals BEFORE DELETE ON originals
BEGIN SELECT RAISE(ABORT, 'originals are only ever added to'); END;
CREATE TRIGGER no_UPDATE_of_readings BEFORE UPDATE ON readings
BEGIN SELECT RAISE(ABORT, 'readings are only ever added to'); END;
CREATE TRIGGER no_DELETE_of_readings BEFORE DELETE ON readings
BEGIN SELECT RAISE(ABORT, 'readings are only ever added to'); END;
