PRAGMA user_version = 2;

-- The logbook. Rows are only ever added; received is the order of arrival. Moments are instants in UTC, text and milliseconds:
-- the text is what was said, the milliseconds are for asking.
CREATE TABLE fact (
    received INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    course TEXT NOT NULL,
    hole TEXT,
    kind TEXT NOT NULL,
    happened_millis INTEGER NOT NULL,
    recorded_at TEXT NOT NULL,
    document TEXT NOT NULL CHECK (json_valid(document))
) STRICT;
CREATE INDEX fact_happened ON fact (course, happened_millis);
