PRAGMA user_version = 5;

-- Photos of something odd, as they came from the camera, each once under the SHA-256 of its content. Beside the entries, so that an
-- entry and its photo are kept together or not at all, and a backup is still one file.
CREATE TABLE photo (
    id INTEGER PRIMARY KEY,
    hash TEXT NOT NULL UNIQUE,
    recorded_at TEXT NOT NULL,
    content BLOB NOT NULL
);
