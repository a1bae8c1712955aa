-- Who changed something, when and why. One revision is one change; what it added points to it.
-- Readings and records from before have none.
CREATE TABLE revisions (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  made_at TEXT NOT NULL,
  who TEXT NOT NULL,
  program TEXT NOT NULL,
  why TEXT NOT NULL
) STRICT;

CREATE INDEX revisions_by_time ON revisions (made_at);

ALTER TABLE readings ADD COLUMN revision INTEGER REFERENCES revisions (id);
ALTER TABLE records ADD COLUMN revision INTEGER REFERENCES revisions (id);

-- The number of the sheet, so that a page that turns up in another file is known again.
ALTER TABLE readings ADD COLUMN sheet INTEGER;
CREATE INDEX readings_of_sheet ON readings (job, sheet, id);

-- What was printed. A pad is printed ahead, so most of these jobs are not opened yet.
CREATE TABLE sheets (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  job TEXT NOT NULL,
  number INTEGER NOT NULL,
  layout TEXT NOT NULL,
  revision INTEGER NOT NULL REFERENCES revisions (id),
  UNIQUE (job, number, layout)
) STRICT;

-- Which visit came before: the last line of a job counts; without an earlier job it is the first.
CREATE TABLE visits (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  job TEXT NOT NULL,
  earlier TEXT,
  revision INTEGER NOT NULL REFERENCES revisions (id)
) STRICT;
CREATE INDEX visits_of_job ON visits (job, id);
CREATE INDEX visits_after ON visits (earlier, id);

-- Finished cards that were made.
CREATE TABLE cards (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  job TEXT NOT NULL REFERENCES jobs (id),
  revision INTEGER NOT NULL REFERENCES revisions (id)
) STRICT;
CREATE INDEX cards_of_job ON cards (job, id);

-- Scans that wait to be read, and what became of them.
CREATE TABLE scans (
  original TEXT PRIMARY KEY REFERENCES originals (sha256),
  arrived_at TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('waiting', 'done', 'doubt')),
  tries INTEGER NOT NULL DEFAULT 0,
  read_by TEXT
) STRICT;
CREATE INDEX scans_waiting ON scans (state, tries, arrived_at);

-- What 'find' looks through: computed from the rest, and made anew where its form is older.
CREATE TABLE overviews (
  job TEXT PRIMARY KEY REFERENCES jobs (id),
  form INTEGER NOT NULL,
  changed_at TEXT NOT NULL,
  day TEXT NOT NULL,
  customer TEXT,
  bow TEXT,
  sheets INTEGER NOT NULL,
  missing TEXT NOT NULL,
  doubts INTEGER NOT NULL,
  state TEXT NOT NULL,
  words TEXT NOT NULL
) STRICT;
-- Holds all that is looked through, in the order in which it is told.
CREATE INDEX overviews_by_change ON overviews (changed_at DESC, job, state, words);

-- What holds for the whole store, such as where the files that were read are kept.
CREATE TABLE facts (
  name TEXT PRIMARY KEY,
  value TEXT NOT NULL
) STRICT;

CREATE TRIGGER no_UPDATE_of_revisions BEFORE UPDATE ON revisions
BEGIN SELECT RAISE(ABORT, 'revisions are only ever added to'); END;
CREATE TRIGGER no_DELETE_of_revisions BEFORE DELETE ON revisions
BEGIN SELECT RAISE(ABORT, 'revisions are only ever added to'); END;
CREATE TRIGGER no_UPDATE_of_sheets BEFORE UPDATE ON sheets
BEGIN SELECT RAISE(ABORT, 'sheets are only ever added to'); END;
CREATE TRIGGER no_DELETE_of_sheets BEFORE DELETE ON sheets
BEGIN SELECT RAISE(ABORT, 'sheets are only ever added to'); END;
CREATE TRIGGER no_UPDATE_of_visits BEFORE UPDATE ON visits
BEGIN SELECT RAISE(ABORT, 'visits are only ever added to'); END;
CREATE TRIGGER no_DELETE_of_visits BEFORE DELETE ON visits
BEGIN SELECT RAISE(ABORT, 'visits are only ever added to'); END;
CREATE TRIGGER no_UPDATE_of_cards BEFORE UPDATE ON cards
BEGIN SELECT RAISE(ABORT, 'cards are only ever added to'); END;
CREATE TRIGGER no_DELETE_of_cards BEFORE DELETE ON cards
BEGIN SELECT RAISE(ABORT, 'cards are only ever added to'); END;
CREATE TRIGGER no_UPDATE_of_jobs BEFORE UPDATE ON jobs
BEGIN SELECT RAISE(ABORT, 'jobs are only ever added to'); END;
CREATE TRIGGER no_DELETE_of_jobs BEFORE DELETE ON jobs
BEGIN SELECT RAISE(ABORT, 'jobs are only ever added to'); END;
CREATE TRIGGER no_UPDATE_of_pages BEFORE UPDATE ON pages
BEGIN SELECT RAISE(ABORT, 'pages are only ever added to'); END;
CREATE TRIGGER no_DELETE_of_pages BEFORE DELETE ON pages
BEGIN SELECT RAISE(ABORT, 'pages are only ever added to'); END;
