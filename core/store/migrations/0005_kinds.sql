-- What a coupling is, and what there is at it. The way it is secured was the kind of its ball joint, so the words stay and
-- the column gets its name; a sleeve where nobody said otherwise. Every coupling of before is a ball joint and has all three.
ALTER TABLE coupling RENAME COLUMN securing TO kind;
-- next
ALTER TABLE coupling ADD COLUMN has_gap INTEGER NOT NULL DEFAULT 1 CHECK (has_gap IN (0, 1));
-- next
ALTER TABLE coupling ADD COLUMN has_pull INTEGER NOT NULL DEFAULT 1 CHECK (has_pull IN (0, 1));
-- next
ALTER TABLE coupling ADD COLUMN has_securing INTEGER NOT NULL DEFAULT 1 CHECK (has_securing IN (0, 1));
-- next
-- Free play felt at the joint itself, along the rod and across it: of a rigging, or of any other day. Nothing judges it.
CREATE TABLE joint_play (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    coupling      BLOB NOT NULL REFERENCES coupling(id),
    record        BLOB REFERENCES rigging_record(id),
    day           TEXT NOT NULL CHECK (day IS date(day)),
    along         TEXT NOT NULL CHECK (along <> ''),
    along_um      INTEGER CHECK (along_um > 0),
    across        TEXT NOT NULL CHECK (across <> ''),
    across_um     INTEGER CHECK (across_um > 0),
    person        BLOB NOT NULL REFERENCES person(id),
    note          TEXT NOT NULL
) STRICT;
-- next
CREATE INDEX joint_play_of_coupling ON joint_play(coupling);
-- next
CREATE INDEX joint_play_of_record ON joint_play(record) WHERE record IS NOT NULL;
-- next
CREATE TRIGGER joint_play_no_update BEFORE UPDATE ON joint_play BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER joint_play_no_delete BEFORE DELETE ON joint_play BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
