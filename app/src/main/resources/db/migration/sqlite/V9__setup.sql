PRAGMA user_version = 9;

-- A course that is being set up by pages, as it stood after every step. The newest row counts; course is empty, as the course is not
-- there yet.
CREATE TABLE set_up_version (
    id INTEGER PRIMARY KEY,
    course TEXT NOT NULL,
    recorded_at TEXT NOT NULL,
    document TEXT NOT NULL CHECK (json_valid(document)),
    check_sum INTEGER
) STRICT;
CREATE INDEX set_up_version_course ON set_up_version (course, id);
