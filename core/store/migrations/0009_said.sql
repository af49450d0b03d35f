-- What somebody who looked found (note) and did (done), and what somebody asks in words of their own. The words finding and
-- asked are new; both columns are empty in all facts of before.
ALTER TABLE event ADD COLUMN done TEXT NOT NULL DEFAULT '';
-- next
ALTER TABLE question ADD COLUMN text TEXT NOT NULL DEFAULT '';
