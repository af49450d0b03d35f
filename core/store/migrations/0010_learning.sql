-- What a newcomer learns an airframe by: how it is drawn from above, from where each coupling is seen, photos, what was asked
-- and said in practice, riggings under somebody who knows it, who signed for whom, and readings that count for nothing else.
ALTER TABLE airframe ADD COLUMN span_cm INTEGER CHECK (span_cm > 0);
-- next
ALTER TABLE airframe ADD COLUMN tail TEXT NOT NULL DEFAULT 'unknown' CHECK (tail <> '');
-- next
ALTER TABLE airframe ADD COLUMN wing_panels INTEGER CHECK (wing_panels > 0);
-- next
ALTER TABLE coupling ADD COLUMN seen_from TEXT NOT NULL DEFAULT 'unknown' CHECK (seen_from <> '');
-- next
ALTER TABLE coupling ADD COLUMN mirror_from TEXT NOT NULL DEFAULT 'unknown' CHECK (mirror_from <> '');
-- next
CREATE TABLE photo (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    coupling      BLOB NOT NULL REFERENCES coupling(id),
    shows         TEXT NOT NULL CHECK (shows <> ''),
    day           TEXT NOT NULL CHECK (day IS date(day)),
    person        BLOB NOT NULL REFERENCES person(id),
    width         INTEGER NOT NULL CHECK (width > 0),
    height        INTEGER NOT NULL CHECK (height > 0),
    note          TEXT NOT NULL
) STRICT;
-- next
CREATE INDEX photo_of_coupling ON photo(coupling);
-- next
CREATE TRIGGER photo_no_update BEFORE UPDATE ON photo BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER photo_no_delete BEFORE DELETE ON photo BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TABLE photo_image (
    photo         BLOB NOT NULL PRIMARY KEY REFERENCES photo(id),
    jpeg          BLOB NOT NULL CHECK (length(jpeg) > 0)
) STRICT;
-- next
CREATE TRIGGER photo_image_no_update BEFORE UPDATE ON photo_image BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER photo_image_no_delete BEFORE DELETE ON photo_image BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TABLE photo_withdrawn (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    photo         BLOB NOT NULL REFERENCES photo(id),
    person        BLOB NOT NULL REFERENCES person(id),
    reason        TEXT NOT NULL CHECK (reason <> '')
) STRICT;
-- next
CREATE INDEX photo_withdrawn_of_photo ON photo_withdrawn(photo);
-- next
CREATE TRIGGER photo_withdrawn_no_update BEFORE UPDATE ON photo_withdrawn BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER photo_withdrawn_no_delete BEFORE DELETE ON photo_withdrawn BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TABLE lesson_round (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    airframe      BLOB NOT NULL REFERENCES airframe(id),
    person        BLOB NOT NULL REFERENCES person(id),
    kind          TEXT NOT NULL CHECK (kind <> ''),
    coupling      BLOB REFERENCES coupling(id),
    asks          INTEGER NOT NULL CHECK (asks >= 0)
) STRICT;
-- next
CREATE INDEX lesson_round_of_airframe ON lesson_round(airframe);
-- next
CREATE TRIGGER lesson_round_no_update BEFORE UPDATE ON lesson_round BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER lesson_round_no_delete BEFORE DELETE ON lesson_round BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TABLE seating_answer (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    round         BLOB NOT NULL REFERENCES lesson_round(id),
    coupling      BLOB NOT NULL REFERENCES coupling(id),
    shown         TEXT NOT NULL CHECK (shown <> ''),
    gap_um        INTEGER CHECK (gap_um >= 0),
    mirror        INTEGER NOT NULL CHECK (mirror IN (0, 1)),
    torch         INTEGER NOT NULL CHECK (torch IN (0, 1)),
    expected      TEXT NOT NULL CHECK (expected <> ''),
    said          TEXT NOT NULL CHECK (said <> ''),
    sure          INTEGER NOT NULL CHECK (sure IN (0, 1))
) STRICT;
-- next
CREATE INDEX seating_answer_of_round ON seating_answer(round);
-- next
CREATE TRIGGER seating_answer_no_update BEFORE UPDATE ON seating_answer BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER seating_answer_no_delete BEFORE DELETE ON seating_answer BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TABLE recall_answer (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    round         BLOB NOT NULL REFERENCES lesson_round(id),
    recalls       TEXT NOT NULL CHECK (recalls <> ''),
    coupling      BLOB REFERENCES coupling(id),
    surface       BLOB REFERENCES surface(id),
    asked         TEXT NOT NULL,
    expected      TEXT NOT NULL,
    said          TEXT NOT NULL,
    sure          INTEGER NOT NULL CHECK (sure IN (0, 1))
) STRICT;
-- next
CREATE INDEX recall_answer_of_round ON recall_answer(round);
-- next
CREATE TRIGGER recall_answer_no_update BEFORE UPDATE ON recall_answer BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER recall_answer_no_delete BEFORE DELETE ON recall_answer BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TABLE supervised_rigging (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    record        BLOB NOT NULL REFERENCES rigging_record(id),
    learner       BLOB NOT NULL REFERENCES person(id),
    mentor        BLOB NOT NULL REFERENCES person(id) CHECK (mentor <> learner),
    note          TEXT NOT NULL
) STRICT;
-- next
CREATE INDEX supervised_rigging_of_record ON supervised_rigging(record);
-- next
CREATE TRIGGER supervised_rigging_no_update BEFORE UPDATE ON supervised_rigging BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER supervised_rigging_no_delete BEFORE DELETE ON supervised_rigging BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TABLE sign_off (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    airframe      BLOB NOT NULL REFERENCES airframe(id),
    person        BLOB NOT NULL REFERENCES person(id),
    signer        BLOB NOT NULL REFERENCES person(id) CHECK (signer <> person),
    kind          TEXT NOT NULL CHECK (kind <> ''),
    day           TEXT NOT NULL CHECK (day IS date(day)),
    months        INTEGER NOT NULL CHECK (months > 0),
    months_without_rigging INTEGER NOT NULL CHECK (months_without_rigging > 0),
    note          TEXT NOT NULL
) STRICT;
-- next
CREATE INDEX sign_off_of_airframe ON sign_off(airframe);
-- next
CREATE TRIGGER sign_off_no_update BEFORE UPDATE ON sign_off BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER sign_off_no_delete BEFORE DELETE ON sign_off BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TABLE crossed_study (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    airframe      BLOB NOT NULL REFERENCES airframe(id),
    repeats       INTEGER NOT NULL CHECK (repeats > 1),
    note          TEXT NOT NULL
) STRICT;
-- next
CREATE INDEX crossed_study_of_airframe ON crossed_study(airframe);
-- next
CREATE TRIGGER crossed_study_no_update BEFORE UPDATE ON crossed_study BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER crossed_study_no_delete BEFORE DELETE ON crossed_study BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TABLE study_place (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    study         BLOB NOT NULL REFERENCES crossed_study(id),
    turn          INTEGER NOT NULL CHECK (turn >= 0),
    coupling      BLOB NOT NULL REFERENCES coupling(id),
    person        BLOB NOT NULL REFERENCES person(id)
) STRICT;
-- next
CREATE INDEX study_place_of_study ON study_place(study);
-- next
CREATE TRIGGER study_place_no_update BEFORE UPDATE ON study_place BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER study_place_no_delete BEFORE DELETE ON study_place BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TABLE practice_reading (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    coupling      BLOB NOT NULL REFERENCES coupling(id),
    person        BLOB NOT NULL REFERENCES person(id),
    enters_um     INTEGER NOT NULL CHECK (enters_um >= 0),
    refuses_um    INTEGER CHECK (refuses_um > enters_um),
    technique     TEXT NOT NULL CHECK (technique <> ''),
    gauge         BLOB NOT NULL REFERENCES gauge(id),
    measured_at   INTEGER NOT NULL,
    measured_offset INTEGER NOT NULL,
    place         BLOB REFERENCES study_place(id)
) STRICT;
-- next
CREATE INDEX practice_reading_of_coupling ON practice_reading(coupling);
-- next
CREATE TRIGGER practice_reading_no_update BEFORE UPDATE ON practice_reading BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER practice_reading_no_delete BEFORE DELETE ON practice_reading BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TABLE practice_shared (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    person        BLOB NOT NULL REFERENCES person(id),
    shared        INTEGER NOT NULL CHECK (shared IN (0, 1))
) STRICT;
-- next
CREATE INDEX practice_shared_of_person ON practice_shared(person);
-- next
CREATE TRIGGER practice_shared_no_update BEFORE UPDATE ON practice_shared BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER practice_shared_no_delete BEFORE DELETE ON practice_shared BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
