-- What was measured beside the readings: how cold it was, and what a gauge read on a gap of known width. Besides, words
-- that earlier versions do not know: go-no-go, note-read, shown-part-seated.
ALTER TABLE rigging_record ADD COLUMN celsius INTEGER CHECK (celsius BETWEEN -60 AND 60);
-- next
ALTER TABLE gauge_check ADD COLUMN known_um INTEGER CHECK (known_um > 0);
-- next
ALTER TABLE gauge_check ADD COLUMN known_enters_um INTEGER
    CHECK (known_enters_um >= 0 AND (known_um IS NULL) = (known_enters_um IS NULL));
-- next
ALTER TABLE gauge_check ADD COLUMN known_refuses_um INTEGER
    CHECK (known_refuses_um > known_enters_um);
