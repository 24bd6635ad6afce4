-- Blind listenings. Rows are only ever added: what was settled before the first question in one transaction, then
-- each answer in one of its own. An answer holds what was asked, so that it means the same without the seed.

CREATE TABLE listening (
    id             INTEGER PRIMARY KEY AUTOINCREMENT,
    started_at     TEXT NOT NULL,
    seed           INTEGER NOT NULL,
    trial_count    INTEGER NOT NULL,
    matched_by     TEXT NOT NULL,
    seconds_each   REAL NOT NULL,
    listener       TEXT,
    played_through TEXT
) STRICT;

CREATE TABLE listening_sound (
    listening_id  INTEGER NOT NULL REFERENCES listening (id),
    ordinal       INTEGER NOT NULL,
    sitting_id    INTEGER NOT NULL REFERENCES sitting (id),
    recording     INTEGER NOT NULL,
    from_seconds  REAL NOT NULL,
    to_seconds    REAL NOT NULL,
    is_note       INTEGER NOT NULL,
    words         TEXT NOT NULL,
    loudness_lufs REAL NOT NULL,
    gain_db       REAL NOT NULL,
    PRIMARY KEY (listening_id, ordinal)
) STRICT, WITHOUT ROWID;

CREATE TABLE listening_answer (
    listening_id INTEGER NOT NULL REFERENCES listening (id),
    ordinal      INTEGER NOT NULL,
    sound_a      INTEGER NOT NULL,
    sound_b      INTEGER NOT NULL,
    x_is_a       INTEGER NOT NULL,
    said_a       INTEGER NOT NULL,
    play_count   INTEGER NOT NULL,
    answered_at  TEXT NOT NULL,
    PRIMARY KEY (listening_id, ordinal),
    FOREIGN KEY (listening_id, sound_a) REFERENCES listening_sound (listening_id, ordinal),
    FOREIGN KEY (listening_id, sound_b) REFERENCES listening_sound (listening_id, ordinal)
) STRICT, WITHOUT ROWID;
