PRAGMA user_version = 4;

-- What an entry corrects, so that a stretch of a long logbook is read with the corrections of it, and entries of a kind by themselves.
ALTER TABLE fact ADD COLUMN corrects TEXT;
UPDATE fact SET corrects = json_extract(document, '$.payload.of') WHERE kind = 'correction';
CREATE INDEX fact_corrects ON fact (corrects) WHERE corrects IS NOT NULL;
CREATE INDEX fact_kind ON fact (course, kind, happened_millis);
