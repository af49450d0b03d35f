-- A rigging that was written down by hand and typed in afterwards: who typed it. stated_at is when that was, begins_at what
-- stood on the paper. What a second person had written and somebody else typed says who copied it.
ALTER TABLE rigging_record ADD COLUMN entered_by BLOB REFERENCES person(id);
-- next
ALTER TABLE answer ADD COLUMN copied_by BLOB REFERENCES person(id);
-- next
ALTER TABLE reading ADD COLUMN copied_by BLOB REFERENCES person(id);
