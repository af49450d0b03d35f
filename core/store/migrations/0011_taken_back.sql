-- What was told by mistake of somebody who learns is taken back by a named person; and a sign-off says how far somebody had
-- come in what is asked for when it was signed.
ALTER TABLE sign_off ADD COLUMN asked_supervised INTEGER CHECK (asked_supervised >= 0);
-- next
ALTER TABLE sign_off ADD COLUMN asked_not_practised INTEGER CHECK (asked_not_practised >= 0);
-- next
ALTER TABLE sign_off ADD COLUMN asked_missed INTEGER CHECK (asked_missed >= 0);
-- next
CREATE TABLE learning_taken_back (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    supervised    BLOB REFERENCES supervised_rigging(id),
    practice      BLOB REFERENCES practice_reading(id),
    person        BLOB NOT NULL REFERENCES person(id),
    reason        TEXT NOT NULL CHECK (reason <> '')
) STRICT;
-- next
CREATE INDEX learning_taken_back_supervised ON learning_taken_back(supervised) WHERE supervised IS NOT NULL;
-- next
CREATE INDEX learning_taken_back_practice ON learning_taken_back(practice) WHERE practice IS NOT NULL;
-- next
CREATE TRIGGER learning_taken_back_no_update BEFORE UPDATE ON learning_taken_back BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER learning_taken_back_no_delete BEFORE DELETE ON learning_taken_back BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
