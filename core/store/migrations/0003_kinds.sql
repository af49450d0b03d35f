-- Kinds in place of words; the second person of a demonstration and the person who states an event in columns of their
-- own; two resolutions of one question may both stand, as two copies of a file may each have closed it. The words that
-- earlier versions of the program wrote themselves become kinds, and any other text stays. Facts are not changed by this,
-- only where they stand: the triggers go for the moment and come back.
ALTER TABLE coupling ADD COLUMN circuit_kind TEXT NOT NULL DEFAULT 'other' CHECK (circuit_kind <> '');
-- next
DROP TRIGGER coupling_no_update;
-- next
UPDATE coupling SET circuit_kind = CASE lower(trim(circuit))
    WHEN 'aileron' THEN 'aileron'
    WHEN 'elevator' THEN 'elevator'
    WHEN 'rudder' THEN 'rudder'
    WHEN 'flap' THEN 'flap'
    WHEN 'airbrake' THEN 'airbrake'
    WHEN 'trim' THEN 'trim'
    WHEN 'water dump' THEN 'water-dump'
    ELSE 'other' END;
-- next
-- What is left stands there in words because no kind names it.
UPDATE coupling SET circuit = '' WHERE circuit_kind <> 'other';
-- next
CREATE TRIGGER coupling_no_update BEFORE UPDATE ON coupling BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
ALTER TABLE fitting ADD COLUMN kind TEXT NOT NULL DEFAULT 'other' CHECK (kind <> '');
-- next
DROP TRIGGER fitting_no_update;
-- next
UPDATE fitting SET kind = 'first', reason = '' WHERE reason IN ('first fitting', 'first fitting in this file');
-- next
CREATE TRIGGER fitting_no_update BEFORE UPDATE ON fitting BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
-- Who stood by while a coupling was shown part-seated.
ALTER TABLE reading ADD COLUMN second BLOB REFERENCES person(id) CHECK (second <> person);
-- next
DROP TRIGGER reading_no_update;
-- next
-- The name is that of a version of the person; the note keeps what was said besides.
UPDATE reading SET
    second = p.subject,
    note = CASE WHEN note = 'Second person: ' || p.name THEN ''
           ELSE substr(note, 1, length(note) - length(' (second person: ' || p.name || ')')) END
FROM person p
WHERE purpose = 'demonstration' AND p.subject <> person
    AND (note = 'Second person: ' || p.name
        OR (length(note) > length(' (second person: ' || p.name || ')')
            AND substr(note, -length(' (second person: ' || p.name || ')')) = ' (second person: ' || p.name || ')'));
-- next
CREATE TRIGGER reading_no_update BEFORE UPDATE ON reading BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
-- Who states it; empty in facts of earlier versions, which did not ask.
ALTER TABLE event ADD COLUMN person BLOB REFERENCES person(id);
-- next
CREATE TABLE resolution_anew (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    question      BLOB NOT NULL REFERENCES question(id),
    person        BLOB NOT NULL REFERENCES person(id),
    found         TEXT NOT NULL CHECK (found <> ''),
    done          TEXT NOT NULL CHECK (done <> '')
) STRICT;
-- next
INSERT INTO resolution_anew SELECT id, stated_by, stated_at, stated_offset, question, person, found, done FROM resolution;
-- next
DROP TABLE resolution;
-- next
ALTER TABLE resolution_anew RENAME TO resolution;
-- next
CREATE INDEX resolution_of_question ON resolution(question);
-- next
CREATE TRIGGER resolution_no_update BEFORE UPDATE ON resolution BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER resolution_no_delete BEFORE DELETE ON resolution BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
