-- What a named person decided of two facts that were saved apart on two computers and stand against each other (docs/store.md,
-- "Two copies of a file").
CREATE TABLE decision (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    kind          TEXT NOT NULL CHECK (kind <> ''),
    first         BLOB NOT NULL CHECK (length(first) = 16),
    second        BLOB NOT NULL CHECK (length(second) = 16 AND second <> first),
    holds         TEXT NOT NULL CHECK (holds <> ''),
    person        BLOB NOT NULL REFERENCES person(id),
    reason        TEXT NOT NULL CHECK (reason <> '')
) STRICT;
-- next
CREATE TRIGGER decision_no_update BEFORE UPDATE ON decision BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER decision_no_delete BEFORE DELETE ON decision BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
