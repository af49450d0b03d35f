-- That the name of a person was replaced on request (docs/decisions, 0008): `replaced` is the row of one version of that person,
-- `reads` the SHA-256 of what stands there since.
CREATE TABLE name_replaced (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    stated_by     BLOB REFERENCES person(id),
    stated_at     INTEGER NOT NULL,
    stated_offset INTEGER NOT NULL,
    replaced      BLOB NOT NULL CHECK (length(replaced) = 16),
    reads         TEXT NOT NULL CHECK (reads <> ''),
    person        BLOB NOT NULL REFERENCES person(id)
) STRICT;
-- next
CREATE INDEX name_replaced_of ON name_replaced(replaced);
-- next
CREATE TRIGGER name_replaced_no_update BEFORE UPDATE ON name_replaced BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER name_replaced_no_delete BEFORE DELETE ON name_replaced BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
