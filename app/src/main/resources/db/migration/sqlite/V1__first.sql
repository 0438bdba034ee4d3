-- All text is UTF-8; days are ISO dates, moments ISO instants in UTC. Nothing is overwritten: the newest row of a kind counts.
PRAGMA application_id = 1129664599; -- "CUPW", so that another program's file is not taken for ours
PRAGMA user_version = 1; -- the data format; read before anything else, so that a newer one is refused

CREATE TABLE course_version (
    id INTEGER PRIMARY KEY,
    course TEXT NOT NULL,
    recorded_at TEXT NOT NULL,
    document TEXT NOT NULL CHECK (json_valid(document))
) STRICT;
CREATE INDEX course_version_course ON course_version (course, id);

-- Points of one green in the course's frame, metres: gzip of big-endian doubles, all easts, all norths, all heights.
-- cell_metres stands for a grid; sigma_metres is what was stated with the survey.
CREATE TABLE survey_version (
    id INTEGER PRIMARY KEY,
    course TEXT NOT NULL,
    hole TEXT NOT NULL,
    recorded_at TEXT NOT NULL,
    epsg INTEGER NOT NULL,
    unit TEXT NOT NULL,
    cell_metres REAL,
    sigma_metres REAL,
    source TEXT NOT NULL,
    point_count INTEGER NOT NULL CHECK (point_count > 0),
    points BLOB NOT NULL
) STRICT;
CREATE INDEX survey_version_hole ON survey_version (course, hole, id);

CREATE TABLE levels_version (
    id INTEGER PRIMARY KEY,
    course TEXT NOT NULL,
    recorded_at TEXT NOT NULL,
    document TEXT NOT NULL CHECK (json_valid(document))
) STRICT;
CREATE INDEX levels_version_course ON levels_version (course, id);

-- An empty course stands for every course of the folder.
CREATE TABLE policy_change (
    id INTEGER PRIMARY KEY,
    course TEXT NOT NULL,
    recorded_at TEXT NOT NULL,
    effective TEXT NOT NULL,
    setting TEXT NOT NULL,
    value TEXT NOT NULL
) STRICT;

CREATE TABLE plan_version (
    id INTEGER PRIMARY KEY,
    course TEXT NOT NULL,
    day TEXT NOT NULL,
    recorded_at TEXT NOT NULL,
    state TEXT NOT NULL CHECK (state IN ('draft', 'published', 'done')),
    policy_version INTEGER NOT NULL,
    engine_version TEXT NOT NULL,
    document TEXT NOT NULL CHECK (json_valid(document))
) STRICT;
CREATE INDEX plan_version_day ON plan_version (course, day, id);
