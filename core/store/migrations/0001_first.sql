-- The first layout of a .rigband file. Frozen once released: a mistake here is mended by a later migration.
-- Every fact has a global time-ordered id and says who stated it when (UTC seconds, and the local offset in seconds).
-- Versioned things keep in `subject` the id of their first version; the version with the greatest id holds. Other
-- facts refer to a versioned thing by its `subject`. Lengths are whole micrometres, days are yyyy-MM-dd. Kinds are
-- short words; the words allowed are listed only where no other can ever come.
-- Who measures, looks, signs or is called.
CREATE TABLE person (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    subject       BLOB NOT NULL REFERENCES person(id),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    name          TEXT NOT NULL,
    role          TEXT NOT NULL,
    phone         TEXT NOT NULL
) STRICT;
-- next
-- One airframe of the file.
CREATE TABLE airframe (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    subject       BLOB NOT NULL REFERENCES airframe(id),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    registration  TEXT NOT NULL,
    type          TEXT NOT NULL,
    serial        TEXT NOT NULL,
    jurisdiction  TEXT NOT NULL,
    manual_refs   TEXT NOT NULL,
    annual_due    TEXT CHECK (annual_due IS date(annual_due)),
    call_name     TEXT NOT NULL,
    call_phone    TEXT NOT NULL,
    riggings_before INTEGER NOT NULL CHECK (riggings_before >= 0)
) STRICT;
-- next
-- A leaf set, pin set or taper gauge; resolution only for a taper gauge.
CREATE TABLE gauge (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    subject       BLOB NOT NULL REFERENCES gauge(id),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    name          TEXT NOT NULL,
    kind          TEXT NOT NULL CHECK (kind <> ''),
    resolution_um INTEGER CHECK (resolution_um > 0),
    tolerance_um  INTEGER CHECK (tolerance_um >= 0),
    note          TEXT NOT NULL,
    in_use        INTEGER NOT NULL CHECK (in_use IN (0, 1))
) STRICT;
-- next
-- The marked sizes of one version of a gauge.
CREATE TABLE gauge_size (
    gauge         BLOB NOT NULL REFERENCES gauge(id),
    size_um       INTEGER NOT NULL CHECK (size_um > 0),
    PRIMARY KEY (gauge, size_um)
) STRICT;
-- next
-- A look at the gauge itself; quarantine_from: readings from this day on are in doubt.
CREATE TABLE gauge_check (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    gauge         BLOB NOT NULL REFERENCES gauge(id),
    day           TEXT NOT NULL CHECK (day IS date(day)),
    how           TEXT NOT NULL,
    found         TEXT NOT NULL,
    quarantine_from TEXT CHECK (quarantine_from IS date(quarantine_from))
) STRICT;
-- next
-- One ball-and-socket joint of one airframe.
CREATE TABLE coupling (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    subject       BLOB NOT NULL REFERENCES coupling(id),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    airframe      BLOB NOT NULL REFERENCES airframe(id),
    name          TEXT NOT NULL,
    circuit       TEXT NOT NULL,
    side          TEXT NOT NULL CHECK (side IN ('none', 'left', 'right')),
    plan_x        REAL,
    plan_y        REAL,
    access        TEXT NOT NULL,
    leaf_place    TEXT NOT NULL,
    layout        TEXT NOT NULL CHECK (layout <> ''),
    securing      TEXT NOT NULL CHECK (securing <> ''),
    rigging_order INTEGER NOT NULL,
    note          TEXT NOT NULL,
    in_use        INTEGER NOT NULL CHECK (in_use IN (0, 1)),
    CHECK ((plan_x IS NULL) = (plan_y IS NULL))
) STRICT;
-- next
-- One period between refits of a coupling.
CREATE TABLE fitting (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    coupling      BLOB NOT NULL REFERENCES coupling(id),
    begins        TEXT NOT NULL CHECK (begins IS date(begins)),
    reason        TEXT NOT NULL
) STRICT;
-- next
-- Something done to the airframe or to one coupling.
CREATE TABLE event (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    airframe      BLOB NOT NULL REFERENCES airframe(id),
    coupling      BLOB REFERENCES coupling(id),
    kind          TEXT NOT NULL CHECK (kind <> ''),
    day           TEXT NOT NULL CHECK (day IS date(day)),
    note          TEXT NOT NULL
) STRICT;
-- next
-- One rigging of one airframe.
CREATE TABLE rigging_record (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    airframe      BLOB NOT NULL REFERENCES airframe(id),
    origin        TEXT NOT NULL CHECK (origin <> ''),
    leader        BLOB NOT NULL REFERENCES person(id),
    begins_at     INTEGER NOT NULL,
    begins_offset INTEGER NOT NULL
) STRICT;
-- next
-- One answer to one question of the look or the pull.
CREATE TABLE answer (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    record        BLOB NOT NULL REFERENCES rigging_record(id),
    coupling      BLOB NOT NULL REFERENCES coupling(id),
    kind          TEXT NOT NULL CHECK (kind <> ''),
    answer        TEXT NOT NULL CHECK (answer IN ('yes', 'no', 'cannot-see')),
    turn          TEXT NOT NULL CHECK (turn IN ('first', 'second')),
    person        BLOB NOT NULL REFERENCES person(id),
    answered_at   INTEGER NOT NULL,
    answered_offset INTEGER NOT NULL
) STRICT;
-- next
-- One interval; refuses_um empty: no upper bound. corrects names the reading that this one supersedes.
CREATE TABLE reading (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    coupling      BLOB NOT NULL REFERENCES coupling(id),
    fitting       BLOB NOT NULL REFERENCES fitting(id),
    record        BLOB REFERENCES rigging_record(id),
    enters_um     INTEGER NOT NULL CHECK (enters_um >= 0),
    refuses_um    INTEGER CHECK (refuses_um > enters_um),
    technique     TEXT NOT NULL CHECK (technique <> ''),
    gauge         BLOB REFERENCES gauge(id),
    state         TEXT NOT NULL CHECK (state IN ('locked', 'part-seated')),
    purpose       TEXT NOT NULL CHECK (purpose <> ''),
    turn          TEXT NOT NULL CHECK (turn IN ('first', 'second')),
    person        BLOB NOT NULL REFERENCES person(id),
    measured_at   INTEGER NOT NULL,
    measured_offset INTEGER NOT NULL,
    note          TEXT NOT NULL,
    corrects      BLOB REFERENCES reading(id)
) STRICT;
-- next
-- What its measurer was shown with a reading: evidence, never input. Without a band the last eight are empty.
CREATE TABLE shown (
    reading       BLOB NOT NULL PRIMARY KEY REFERENCES reading(id),
    method        INTEGER NOT NULL,
    verdict       TEXT NOT NULL CHECK (verdict <> ''),
    reason        TEXT NOT NULL CHECK (reason <> ''),
    direction     TEXT NOT NULL CHECK (direction <> ''),
    tail          REAL NOT NULL,
    witness       TEXT NOT NULL CHECK (witness <> ''),
    miss          REAL,
    inner_lower   REAL,
    inner_upper   REAL,
    outer_lower   REAL,
    outer_upper   REAL,
    median        REAL,
    scatter       REAL,
    readings      INTEGER,
    at_cap        INTEGER CHECK (at_cap IN (0, 1))
) STRICT;
-- next
-- A baseline reading left out of its band, with a reason.
CREATE TABLE exclusion (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    reading       BLOB NOT NULL REFERENCES reading(id),
    reason        TEXT NOT NULL
) STRICT;
-- next
-- A frozen baseline with its two names.
CREATE TABLE baseline (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    fitting       BLOB NOT NULL REFERENCES fitting(id),
    first         BLOB NOT NULL REFERENCES person(id),
    second        BLOB NOT NULL REFERENCES person(id),
    CHECK (first <> second)
) STRICT;
-- next
-- The readings that a frozen baseline is made of.
CREATE TABLE baseline_reading (
    baseline      BLOB NOT NULL REFERENCES baseline(id),
    reading       BLOB NOT NULL REFERENCES reading(id),
    PRIMARY KEY (baseline, reading)
) STRICT;
-- next
-- A break in the work on one coupling.
CREATE TABLE interruption (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    record        BLOB NOT NULL REFERENCES rigging_record(id),
    coupling      BLOB NOT NULL REFERENCES coupling(id),
    turn          TEXT NOT NULL CHECK (turn IN ('first', 'second')),
    reason        TEXT NOT NULL CHECK (reason <> '')
) STRICT;
-- next
-- The end of a rigging record.
CREATE TABLE closing (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    record        BLOB NOT NULL REFERENCES rigging_record(id),
    closing       TEXT NOT NULL CHECK (closing <> ''),
    first         BLOB REFERENCES person(id),
    second        BLOB REFERENCES person(id),
    note          TEXT NOT NULL,
    CHECK (first IS NULL OR second IS NULL OR first <> second)
) STRICT;
-- next
CREATE INDEX person_versions ON person(subject, id);
-- next
CREATE INDEX airframe_versions ON airframe(subject, id);
-- next
CREATE INDEX gauge_versions ON gauge(subject, id);
-- next
CREATE INDEX coupling_versions ON coupling(subject, id);
-- next
CREATE INDEX coupling_of_airframe ON coupling(airframe);
-- next
CREATE INDEX gauge_check_of_gauge ON gauge_check(gauge);
-- next
CREATE INDEX fitting_of_coupling ON fitting(coupling);
-- next
CREATE INDEX event_of_airframe ON event(airframe);
-- next
CREATE INDEX record_of_airframe ON rigging_record(airframe, id);
-- next
CREATE INDEX answer_of_record ON answer(record);
-- next
CREATE INDEX reading_of_coupling ON reading(coupling, measured_at);
-- next
CREATE INDEX reading_of_record ON reading(record) WHERE record IS NOT NULL;
-- next
CREATE INDEX reading_corrected ON reading(corrects) WHERE corrects IS NOT NULL;
-- next
CREATE INDEX exclusion_of_reading ON exclusion(reading);
-- next
CREATE INDEX baseline_of_fitting ON baseline(fitting);
-- next
CREATE INDEX interruption_of_record ON interruption(record);
-- next
CREATE INDEX closing_of_record ON closing(record);
-- next
CREATE TRIGGER person_no_update BEFORE UPDATE ON person BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER person_no_delete BEFORE DELETE ON person BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER airframe_no_update BEFORE UPDATE ON airframe BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER airframe_no_delete BEFORE DELETE ON airframe BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER gauge_no_update BEFORE UPDATE ON gauge BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER gauge_no_delete BEFORE DELETE ON gauge BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER gauge_size_no_update BEFORE UPDATE ON gauge_size BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER gauge_size_no_delete BEFORE DELETE ON gauge_size BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER gauge_check_no_update BEFORE UPDATE ON gauge_check BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER gauge_check_no_delete BEFORE DELETE ON gauge_check BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER coupling_no_update BEFORE UPDATE ON coupling BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER coupling_no_delete BEFORE DELETE ON coupling BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER fitting_no_update BEFORE UPDATE ON fitting BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER fitting_no_delete BEFORE DELETE ON fitting BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER event_no_update BEFORE UPDATE ON event BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER event_no_delete BEFORE DELETE ON event BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER rigging_record_no_update BEFORE UPDATE ON rigging_record BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER rigging_record_no_delete BEFORE DELETE ON rigging_record BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER answer_no_update BEFORE UPDATE ON answer BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER answer_no_delete BEFORE DELETE ON answer BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER reading_no_update BEFORE UPDATE ON reading BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER reading_no_delete BEFORE DELETE ON reading BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER shown_no_update BEFORE UPDATE ON shown BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER shown_no_delete BEFORE DELETE ON shown BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER exclusion_no_update BEFORE UPDATE ON exclusion BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER exclusion_no_delete BEFORE DELETE ON exclusion BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER baseline_no_update BEFORE UPDATE ON baseline BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER baseline_no_delete BEFORE DELETE ON baseline BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER baseline_reading_no_update BEFORE UPDATE ON baseline_reading BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER baseline_reading_no_delete BEFORE DELETE ON baseline_reading BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER interruption_no_update BEFORE UPDATE ON interruption BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER interruption_no_delete BEFORE DELETE ON interruption BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER closing_no_update BEFORE UPDATE ON closing BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER closing_no_delete BEFORE DELETE ON closing BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
