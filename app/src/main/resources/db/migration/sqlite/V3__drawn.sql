PRAGMA user_version = 3;

-- Ground that people drew or named as good or bad. The newest row of a course counts.
CREATE TABLE drawn_version (
    id INTEGER PRIMARY KEY,
    course TEXT NOT NULL,
    recorded_at TEXT NOT NULL,
    document TEXT NOT NULL CHECK (json_valid(document))
) STRICT;
CREATE INDEX drawn_version_course ON drawn_version (course, id);
