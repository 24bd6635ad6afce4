-- Everything a workshop knows. NULL always means: nobody wrote it down.
-- Instants are UTC text with nine decimals, so that text order is time order. Keys (kind, stage, …) are the
-- lower-case words the program types and reads; they never change once released.

CREATE TABLE instrument (
    id                       INTEGER PRIMARY KEY AUTOINCREMENT,
    shop_number              TEXT NOT NULL UNIQUE,
    kind                     TEXT NOT NULL,
    scale_length_mm          REAL,
    string_count             INTEGER,
    soundhole_diameter_mm    REAL,
    body_notes               TEXT,
    construction             TEXT,
    outer_skin               TEXT,
    outer_skin_mm            REAL,
    core                     TEXT,
    core_mm                  REAL,
    inner_skin               TEXT,
    inner_skin_mm            REAL,
    bracing                  TEXT,
    nickname                 TEXT,
    notes                    TEXT
) STRICT;

CREATE TABLE sitting (
    id                        INTEGER PRIMARY KEY AUTOINCREMENT,
    instrument_id             INTEGER NOT NULL REFERENCES instrument (id),
    taken_at                  TEXT NOT NULL,
    time_known                INTEGER NOT NULL CHECK (time_known IN (0, 1)),
    added_at                  TEXT NOT NULL,
    stage                     TEXT,
    temperature_celsius       REAL,
    relative_humidity_percent REAL,
    strings                   TEXT,
    string_set                TEXT,
    strings_fitted_on         TEXT,
    hole                      TEXT,
    support                   TEXT,
    strike_tool               TEXT,
    strike_place              TEXT,
    microphone                TEXT,
    microphone_distance_mm    REAL,
    gain                      TEXT,
    operator                  TEXT,
    note                      TEXT
) STRICT;
CREATE INDEX sitting_of_instrument ON sitting (instrument_id, taken_at, id);
CREATE INDEX sitting_by_time ON sitting (taken_at, id);

-- An original lies under originals/<first two digits>/<sha256>.<extension> and is never changed.
CREATE TABLE original (
    sha256     TEXT PRIMARY KEY,
    size_bytes INTEGER NOT NULL,
    extension  TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- The place of a recording within its sitting, from 0, is the source number of its strikes.
CREATE TABLE recording (
    sitting_id     INTEGER NOT NULL REFERENCES sitting (id),
    place          INTEGER NOT NULL,
    sha256         TEXT NOT NULL REFERENCES original (sha256),
    file_name      TEXT NOT NULL,
    format         TEXT NOT NULL,
    sample_rate_hz REAL NOT NULL,
    channel_count  INTEGER NOT NULL,
    channel_used   INTEGER NOT NULL,
    duration_s     REAL NOT NULL,
    PRIMARY KEY (sitting_id, place)
) STRICT, WITHOUT ROWID;
CREATE INDEX recording_of_original ON recording (sha256);

CREATE TABLE recording_notice (
    sitting_id INTEGER NOT NULL,
    place      INTEGER NOT NULL,
    ordinal    INTEGER NOT NULL,
    notice     TEXT NOT NULL,
    PRIMARY KEY (sitting_id, place, ordinal),
    FOREIGN KEY (sitting_id, place) REFERENCES recording (sitting_id, place)
) STRICT, WITHOUT ROWID;

-- Analyses are only ever added; number counts them within a sitting, from 1.
CREATE TABLE analysis (
    id              INTEGER PRIMARY KEY AUTOINCREMENT,
    sitting_id      INTEGER NOT NULL REFERENCES sitting (id),
    number          INTEGER NOT NULL,
    made_at         TEXT NOT NULL,
    method_version  TEXT NOT NULL,
    low_hz          REAL NOT NULL,
    high_hz         REAL NOT NULL,
    longest_decay_s REAL NOT NULL,
    minimum_snr_db  REAL NOT NULL,
    UNIQUE (sitting_id, number)
) STRICT;

CREATE TABLE analysis_warning (
    analysis_id INTEGER NOT NULL REFERENCES analysis (id),
    ordinal     INTEGER NOT NULL,
    warning     TEXT NOT NULL,
    PRIMARY KEY (analysis_id, ordinal)
) STRICT, WITHOUT ROWID;

CREATE TABLE strike (
    analysis_id INTEGER NOT NULL REFERENCES analysis (id),
    ordinal     INTEGER NOT NULL,
    source      INTEGER NOT NULL,
    onset_s     REAL NOT NULL,
    peak_dbfs   REAL NOT NULL,
    snr_db      REAL NOT NULL,
    PRIMARY KEY (analysis_id, ordinal)
) STRICT, WITHOUT ROWID;

CREATE TABLE strike_rejection (
    analysis_id INTEGER NOT NULL,
    strike      INTEGER NOT NULL,
    ordinal     INTEGER NOT NULL,
    reason      TEXT NOT NULL,
    figure      TEXT NOT NULL,
    PRIMARY KEY (analysis_id, strike, ordinal),
    FOREIGN KEY (analysis_id, strike) REFERENCES strike (analysis_id, ordinal)
) STRICT, WITHOUT ROWID;

-- _u is the standard uncertainty, _dof its degrees of freedom (infinite where as good as known). What lists
-- read comes first, because SQLite steps through a row from its start.
CREATE TABLE resonance (
    analysis_id    INTEGER NOT NULL REFERENCES analysis (id),
    ordinal        INTEGER NOT NULL,
    suggested_name TEXT,
    frequency_hz   REAL NOT NULL,
    frequency_u_hz REAL NOT NULL,
    frequency_dof  REAL NOT NULL,
    q              REAL NOT NULL,
    q_u            REAL NOT NULL,
    q_dof          REAL NOT NULL,
    decay_time_s   REAL NOT NULL,
    decay_time_u_s REAL NOT NULL,
    decay_time_dof REAL NOT NULL,
    level_db       REAL NOT NULL,
    level_u_db     REAL NOT NULL,
    level_dof      REAL NOT NULL,
    strike_count   INTEGER NOT NULL,
    note           TEXT NOT NULL,
    name_reason    TEXT NOT NULL,
    PRIMARY KEY (analysis_id, ordinal)
) STRICT, WITHOUT ROWID;

-- Kept apart because it is large and only needed to draw one sitting; CurveBlob says what the bytes mean.
CREATE TABLE response_curve (
    analysis_id INTEGER PRIMARY KEY REFERENCES analysis (id),
    points      BLOB NOT NULL
) STRICT;

-- What the maker said about names; only ever added, the latest word on a frequency holds.
CREATE TABLE given_name (
    sitting_id   INTEGER NOT NULL REFERENCES sitting (id),
    ordinal      INTEGER NOT NULL,
    frequency_hz REAL NOT NULL,
    name         TEXT,
    given_at     TEXT NOT NULL,
    PRIMARY KEY (sitting_id, ordinal)
) STRICT, WITHOUT ROWID;
