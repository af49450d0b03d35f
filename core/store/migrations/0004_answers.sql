-- A part that was felt and not seen is an answer of its own. Facts are not changed by this, only where they stand.
CREATE TABLE answer_anew (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    record        BLOB NOT NULL REFERENCES rigging_record(id),
    coupling      BLOB NOT NULL REFERENCES coupling(id),
    kind          TEXT NOT NULL CHECK (kind <> ''),
    answer        TEXT NOT NULL CHECK (answer <> ''),
    turn          TEXT NOT NULL CHECK (turn IN ('first', 'second')),
    person        BLOB NOT NULL REFERENCES person(id),
    answered_at   INTEGER NOT NULL,
    answered_offset INTEGER NOT NULL
) STRICT;
-- next
INSERT INTO answer_anew SELECT id, stated_by, stated_at, stated_offset, record, coupling, kind, answer, turn, person,
    answered_at, answered_offset FROM answer ORDER BY rowid;
-- next
DROP TABLE answer;
-- next
ALTER TABLE answer_anew RENAME TO answer;
-- next
CREATE INDEX answer_of_record ON answer(record);
-- next
CREATE TRIGGER answer_no_update BEFORE UPDATE ON answer BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER answer_no_delete BEFORE DELETE ON answer BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TABLE surface_answer_anew (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    record        BLOB NOT NULL REFERENCES rigging_record(id),
    surface       BLOB NOT NULL REFERENCES surface(id),
    kind          TEXT NOT NULL CHECK (kind <> ''),
    answer        TEXT NOT NULL CHECK (answer <> ''),
    person        BLOB NOT NULL REFERENCES person(id),
    cockpit       BLOB NOT NULL REFERENCES person(id),
    CHECK (person <> cockpit)
) STRICT;
-- next
INSERT INTO surface_answer_anew SELECT id, stated_by, stated_at, stated_offset, record, surface, kind, answer, person,
    cockpit FROM surface_answer ORDER BY rowid;
-- next
DROP TABLE surface_answer;
-- next
ALTER TABLE surface_answer_anew RENAME TO surface_answer;
-- next
CREATE INDEX surface_answer_of_record ON surface_answer(record);
-- next
CREATE TRIGGER surface_answer_no_update BEFORE UPDATE ON surface_answer BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER surface_answer_no_delete BEFORE DELETE ON surface_answer BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
