PRAGMA user_version = 12;

-- How play of a day begins and who cuts which holes. The newest row of a day counts; start_type is how it began, also where that was as
-- usual, so that what was said last is found for a day that begins alike.
CREATE TABLE round_version (
    id INTEGER PRIMARY KEY,
    course TEXT NOT NULL,
    day TEXT NOT NULL,
    start_type TEXT NOT NULL,
    recorded_at TEXT NOT NULL,
    document TEXT NOT NULL CHECK (json_valid(document)),
    check_sum INTEGER
) STRICT;
CREATE INDEX round_version_day ON round_version (course, day, id);
