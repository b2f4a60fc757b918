-- The first schema. Absent values are empty texts; lengths are exact and carry their unit ('444.2 mm').
-- act, change, revision and bench only ever grow.

CREATE TABLE act (
  seq       INTEGER PRIMARY KEY AUTOINCREMENT,
  id        TEXT NOT NULL UNIQUE,
  device    TEXT NOT NULL,
  number    INTEGER NOT NULL,            -- the device's own count; 0 when it does not count
  at        TEXT NOT NULL,
  kind      TEXT NOT NULL,
  words     TEXT NOT NULL,
  job       TEXT NOT NULL,
  subject   TEXT NOT NULL,
  refused   TEXT NOT NULL,               -- why a counted act was answered with no; it changed nothing
  undoes    INTEGER NOT NULL,            -- seq of the act this one took back, or 0
  undone_by INTEGER NOT NULL             -- seq of the act that took this one back, or 0
) STRICT;
CREATE INDEX act_of_device ON act (device, number);
CREATE INDEX act_of_job ON act (job);

CREATE TABLE change (
  act       INTEGER NOT NULL REFERENCES act (seq),
  nr        INTEGER NOT NULL,
  place     TEXT NOT NULL,               -- which table
  row       TEXT NOT NULL,               -- which row
  before    TEXT NOT NULL,               -- the changed columns as they were, as JSON; empty when the row is new
  after     TEXT NOT NULL,               -- the same as they are now; empty when the row is gone
  PRIMARY KEY (act, nr)
) STRICT, WITHOUT ROWID;

CREATE TABLE client (
  id        TEXT PRIMARY KEY,
  name      TEXT NOT NULL,
  contact   TEXT NOT NULL,
  note      TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE job (
  id        TEXT PRIMARY KEY,
  title     TEXT NOT NULL,
  client    TEXT NOT NULL,
  due       TEXT NOT NULL,
  price     TEXT NOT NULL,
  state     TEXT NOT NULL CHECK (state IN ('in hand', 'finished', 'put away')),
  revision  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE revision (
  job       TEXT NOT NULL,
  number    INTEGER NOT NULL,
  act       INTEGER NOT NULL REFERENCES act (seq),
  text      TEXT NOT NULL,
  PRIMARY KEY (job, number)
) STRICT;

CREATE TABLE rack (
  id        TEXT PRIMARY KEY,
  nr        INTEGER NOT NULL,            -- the order in which it was put there
  form      TEXT NOT NULL CHECK (form IN ('board', 'sheet', 'stick')),
  material  TEXT NOT NULL,
  rough     TEXT NOT NULL,
  thickness TEXT NOT NULL,
  measured  TEXT NOT NULL,
  length    TEXT NOT NULL,
  width     TEXT NOT NULL,
  grade     TEXT NOT NULL,
  grain     TEXT NOT NULL,
  cut_from  TEXT NOT NULL,
  price     TEXT NOT NULL,
  place     TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE supply (
  id        TEXT PRIMARY KEY,
  kind      TEXT NOT NULL CHECK (kind IN ('hardware', 'finish')),
  name      TEXT NOT NULL,
  amount    TEXT NOT NULL,
  unit      TEXT NOT NULL,
  price     TEXT NOT NULL,
  place     TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE setting (
  id        TEXT PRIMARY KEY,            -- section / name
  section   TEXT NOT NULL,
  name      TEXT NOT NULL,
  value     TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE bench (
  seq       INTEGER PRIMARY KEY AUTOINCREMENT,
  act       INTEGER NOT NULL REFERENCES act (seq),
  job       TEXT NOT NULL,
  kind      TEXT NOT NULL,
  subject   TEXT NOT NULL,
  body      TEXT NOT NULL
) STRICT;
CREATE INDEX bench_of_job ON bench (job);

CREATE TABLE photo (
  id        TEXT PRIMARY KEY,            -- SHA-256 of its bytes
  kind      TEXT NOT NULL CHECK (kind IN ('jpg', 'png', 'webp')),
  bytes     BLOB NOT NULL
) STRICT;

-- Who may come in. No part of the journal: nobody is let in again by an undo.
CREATE TABLE device (
  id        TEXT PRIMARY KEY,
  name      TEXT NOT NULL,
  token     TEXT NOT NULL UNIQUE,        -- SHA-256 of the token; the token itself is on the device only
  paired    TEXT NOT NULL,
  revoked   TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TRIGGER bench_stays  BEFORE DELETE ON bench    BEGIN SELECT RAISE(ABORT, 'the bench log only grows'); END;
CREATE TRIGGER bench_is_so  BEFORE UPDATE ON bench    BEGIN SELECT RAISE(ABORT, 'the bench log only grows'); END;
CREATE TRIGGER text_stays   BEFORE DELETE ON revision BEGIN SELECT RAISE(ABORT, 'revisions only grow'); END;
CREATE TRIGGER text_is_so   BEFORE UPDATE ON revision BEGIN SELECT RAISE(ABORT, 'revisions only grow'); END;
CREATE TRIGGER act_stays    BEFORE DELETE ON act      BEGIN SELECT RAISE(ABORT, 'acts only grow'); END;
