PRAGMA user_version = 8;

-- Those who may sign in, and the codes by which they come to. These rows are written anew where something changes: an old password's
-- hash and an erased name must not stay. name_key is the name without capitals, so that no two have one name.
CREATE TABLE person (
    id INTEGER PRIMARY KEY,
    account TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL,
    name_key TEXT NOT NULL UNIQUE,
    role TEXT NOT NULL,
    active INTEGER NOT NULL CHECK (active IN (0, 1)),
    password_hash TEXT NOT NULL,
    made_at TEXT NOT NULL,
    changed_at TEXT NOT NULL,
    check_sum INTEGER
) STRICT;

CREATE TABLE sign_in_code (
    id INTEGER PRIMARY KEY,
    hash TEXT NOT NULL UNIQUE,
    name TEXT,
    role TEXT NOT NULL,
    made_at TEXT NOT NULL,
    until TEXT NOT NULL,
    used_at TEXT,
    check_sum INTEGER
) STRICT;

-- Who changed what others rely on. Rows are only ever added; a name in them is replaced where a person is erased.
CREATE TABLE audit (
    id INTEGER PRIMARY KEY,
    at_millis INTEGER NOT NULL,
    kind TEXT NOT NULL,
    course TEXT NOT NULL,
    by_account TEXT,
    about_account TEXT,
    document TEXT NOT NULL CHECK (json_valid(document)),
    check_sum INTEGER
) STRICT;
CREATE INDEX audit_at ON audit (at_millis);
