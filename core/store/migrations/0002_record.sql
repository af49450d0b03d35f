-- The whole rigging record: control surfaces and their check, questions and how they were closed, ticks.
-- A control surface as the control check goes through it. Deflections are thousandths of the unit, taken from the
-- manual that manual_reference names; empty where nobody entered them.
CREATE TABLE surface (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    subject       BLOB NOT NULL REFERENCES surface(id),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    airframe      BLOB NOT NULL REFERENCES airframe(id),
    name          TEXT NOT NULL,
    kind          TEXT NOT NULL CHECK (kind <> ''),
    side          TEXT NOT NULL CHECK (side IN ('none', 'left', 'right')),
    check_order   INTEGER NOT NULL,
    sense_call    TEXT NOT NULL,
    unit          TEXT NOT NULL CHECK (unit IN ('degrees', 'millimetres')),
    measured_at_um INTEGER CHECK (measured_at_um > 0),
    up_nominal    INTEGER CHECK (up_nominal >= 0),
    up_tolerance  INTEGER CHECK (up_tolerance >= 0),
    down_nominal  INTEGER CHECK (down_nominal >= 0),
    down_tolerance INTEGER CHECK (down_tolerance >= 0),
    most_play     INTEGER CHECK (most_play >= 0),
    manual_reference TEXT NOT NULL,
    in_use        INTEGER NOT NULL CHECK (in_use IN (0, 1)),
    CHECK ((up_nominal IS NULL) = (up_tolerance IS NULL)),
    CHECK ((down_nominal IS NULL) = (down_tolerance IS NULL))
) STRICT;
-- next
-- One answer of the control check: person at the surface, cockpit at the control.
CREATE TABLE surface_answer (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    record        BLOB NOT NULL REFERENCES rigging_record(id),
    surface       BLOB NOT NULL REFERENCES surface(id),
    kind          TEXT NOT NULL CHECK (kind <> ''),
    answer        TEXT NOT NULL CHECK (answer IN ('yes', 'no', 'cannot-see')),
    person        BLOB NOT NULL REFERENCES person(id),
    cockpit       BLOB NOT NULL REFERENCES person(id),
    CHECK (person <> cockpit)
) STRICT;
-- next
-- One measured figure of a surface, in thousandths of the unit.
CREATE TABLE surface_measure (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    record        BLOB NOT NULL REFERENCES rigging_record(id),
    surface       BLOB NOT NULL REFERENCES surface(id),
    kind          TEXT NOT NULL CHECK (kind <> ''),
    unit          TEXT NOT NULL CHECK (unit IN ('degrees', 'millimetres')),
    value         INTEGER NOT NULL CHECK (value >= 0),
    measured_at_um INTEGER CHECK (measured_at_um > 0),
    person        BLOB NOT NULL REFERENCES person(id)
) STRICT;
-- next
-- What is done once for a whole record.
CREATE TABLE tick (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    record        BLOB NOT NULL REFERENCES rigging_record(id),
    kind          TEXT NOT NULL CHECK (kind <> ''),
    person        BLOB NOT NULL REFERENCES person(id)
) STRICT;
-- next
-- Something that has to be found out. It stays open until a resolution names it.
CREATE TABLE question (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    airframe      BLOB NOT NULL REFERENCES airframe(id),
    kind          TEXT NOT NULL CHECK (kind <> ''),
    record        BLOB REFERENCES rigging_record(id),
    coupling      BLOB REFERENCES coupling(id),
    surface       BLOB REFERENCES surface(id),
    reading       BLOB REFERENCES reading(id),
    gauge         BLOB REFERENCES gauge(id),
    check_kind    TEXT CHECK (check_kind <> ''),
    surface_check TEXT CHECK (surface_check <> '')
) STRICT;
-- next
-- How a question was closed, by a named person.
CREATE TABLE resolution (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    question      BLOB NOT NULL UNIQUE REFERENCES question(id),
    person        BLOB NOT NULL REFERENCES person(id),
    found         TEXT NOT NULL CHECK (found <> ''),
    done          TEXT NOT NULL CHECK (done <> '')
) STRICT;
-- next
CREATE INDEX surface_versions ON surface(subject, id);
-- next
CREATE INDEX surface_of_airframe ON surface(airframe);
-- next
CREATE INDEX surface_answer_of_record ON surface_answer(record);
-- next
CREATE INDEX surface_measure_of_record ON surface_measure(record);
-- next
CREATE INDEX tick_of_record ON tick(record);
-- next
CREATE INDEX question_of_airframe ON question(airframe);
-- next
CREATE INDEX question_of_record ON question(record) WHERE record IS NOT NULL;
-- next
CREATE TRIGGER surface_no_update BEFORE UPDATE ON surface BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER surface_no_delete BEFORE DELETE ON surface BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER surface_answer_no_update BEFORE UPDATE ON surface_answer BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER surface_answer_no_delete BEFORE DELETE ON surface_answer BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER surface_measure_no_update BEFORE UPDATE ON surface_measure BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER surface_measure_no_delete BEFORE DELETE ON surface_measure BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER tick_no_update BEFORE UPDATE ON tick BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER tick_no_delete BEFORE DELETE ON tick BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER question_no_update BEFORE UPDATE ON question BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER question_no_delete BEFORE DELETE ON question BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER resolution_no_update BEFORE UPDATE ON resolution BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER resolution_no_delete BEFORE DELETE ON resolution BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
