-- Who connected each side of a rigging, as it was stated: everybody who had a hand on it, or nobody's name where it is not
-- known. A later statement for the same side stands beside the earlier one and counts.
CREATE TABLE connected (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    record        BLOB NOT NULL REFERENCES rigging_record(id),
    side          TEXT NOT NULL CHECK (side IN ('none', 'left', 'right'))
) STRICT;
-- next
CREATE TABLE connected_person (
    connected     BLOB NOT NULL REFERENCES connected(id),
    person        BLOB NOT NULL REFERENCES person(id),
    PRIMARY KEY (connected, person)
) STRICT;
-- next
CREATE INDEX connected_of_record ON connected(record);
-- next
CREATE TRIGGER connected_no_update BEFORE UPDATE ON connected BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER connected_no_delete BEFORE DELETE ON connected BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER connected_person_no_update BEFORE UPDATE ON connected_person BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER connected_person_no_delete BEFORE DELETE ON connected_person BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
-- What the surface did, as it was called by whoever stood there; empty where nothing was called, and in answers of earlier
-- versions, which asked with a yes or a no whether it moved as expected.
ALTER TABLE surface_answer ADD COLUMN seen TEXT CHECK (seen <> '');
