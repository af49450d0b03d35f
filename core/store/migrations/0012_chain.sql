-- The chain: each fact has a link, and each link holds the hash of the one before (docs/store.md). An origin is one opening of
-- the file that wrote to it; facts of before are taken over under one that bears the id of the first of them, so that two copies
-- of a file take them over alike. Where two copies of a file were joined, a tie says of which ends the next link's `before` is made.
CREATE TABLE origin (
    id            BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    begun_at      INTEGER NOT NULL,
    begun_offset  INTEGER NOT NULL,
    taken_over    INTEGER NOT NULL CHECK (taken_over IN (0, 1))
) STRICT;
-- next
CREATE TRIGGER origin_no_update BEFORE UPDATE ON origin BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER origin_no_delete BEFORE DELETE ON origin BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TABLE link (
    sequence      INTEGER NOT NULL CHECK (sequence > 0),
    hash          BLOB NOT NULL CHECK (length(hash) = 32),
    origin        BLOB NOT NULL REFERENCES origin(id),
    kind          TEXT NOT NULL CHECK (kind <> ''),
    fact          BLOB NOT NULL CHECK (length(fact) = 16),
    before        BLOB NOT NULL CHECK (length(before) = 32)
) STRICT;
-- next
CREATE INDEX link_of_sequence ON link(sequence);
-- next
CREATE INDEX link_of_fact ON link(fact);
-- next
CREATE TRIGGER link_no_update BEFORE UPDATE ON link BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER link_no_delete BEFORE DELETE ON link BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TABLE tie (
    before        BLOB NOT NULL CHECK (length(before) = 32),
    hash          BLOB NOT NULL CHECK (length(hash) = 32),
    sequence      INTEGER NOT NULL CHECK (sequence > 0)
) STRICT;
-- next
CREATE INDEX tie_of_before ON tie(before);
-- next
CREATE TRIGGER tie_no_update BEFORE UPDATE ON tie BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
-- next
CREATE TRIGGER tie_no_delete BEFORE DELETE ON tie BEGIN
    SELECT RAISE(ABORT, 'facts are append-only');
END;
