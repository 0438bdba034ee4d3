PRAGMA user_version = 13;

-- What people learnt, practised and were signed off for. Rows are only ever added; a name in them is replaced where a person is erased.
CREATE TABLE training (
    id INTEGER PRIMARY KEY,
    entry TEXT NOT NULL UNIQUE,
    decides INTEGER NOT NULL CHECK (decides IN (0, 1)),
    document TEXT NOT NULL CHECK (json_valid(document)),
    check_sum INTEGER
) STRICT;
CREATE INDEX training_decides ON training (decides, id);
