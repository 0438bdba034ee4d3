PRAGMA user_version = 11;

-- Phones on which somebody stays signed in for a season, and those that several share, which are nobody's. Of what a phone shows
-- only sums are kept: of what it is to show next, and of what it showed before. These rows are written anew and taken away: what
-- counts no more must not stay.
CREATE TABLE phone (
    id INTEGER PRIMARY KEY,
    phone TEXT NOT NULL UNIQUE,
    account TEXT,
    token_hash TEXT NOT NULL,
    token_before TEXT NOT NULL,
    made_at TEXT NOT NULL,
    seen_at TEXT NOT NULL,
    until TEXT NOT NULL,
    check_sum INTEGER
) STRICT;

-- A few digits by which somebody is told from the others on a shared phone.
CREATE TABLE pin (
    id INTEGER PRIMARY KEY,
    account TEXT NOT NULL UNIQUE,
    hash TEXT NOT NULL,
    set_at TEXT NOT NULL,
    check_sum INTEGER
) STRICT;

-- Wrong ones that were typed on a shared phone since that name's last right one; at so many the phone is shared no more.
CREATE TABLE wrong_pin (
    id INTEGER PRIMARY KEY,
    phone TEXT NOT NULL,
    account TEXT NOT NULL,
    typed_at TEXT NOT NULL,
    check_sum INTEGER
) STRICT;
