-- Strikes the maker does not want used, by the recording they are in and when they began there.

CREATE TABLE strike_set_aside (
    analysis_id INTEGER NOT NULL REFERENCES analysis (id),
    ordinal     INTEGER NOT NULL,
    source      INTEGER NOT NULL,
    onset_s     REAL NOT NULL,
    PRIMARY KEY (analysis_id, ordinal)
) STRICT, WITHOUT ROWID;

-- A recording in the folder captures: running, or waiting for the maker to keep it. writer says which program writes
-- it (process number and start of the process); NULL once it was ended in order. state is waiting, kept or set-aside.
-- The columns of its procedure are NULL where it does not have them.
CREATE TABLE capture (
    id                        INTEGER PRIMARY KEY AUTOINCREMENT,
    instrument_id             INTEGER NOT NULL REFERENCES instrument (id),
    file_name                 TEXT NOT NULL,
    state                     TEXT NOT NULL,
    writer                    TEXT,
    started_at                TEXT NOT NULL,
    device                    TEXT NOT NULL,
    rate_hz                   INTEGER NOT NULL,
    channel_count             INTEGER NOT NULL,
    bits                      INTEGER NOT NULL,
    procedure                 TEXT NOT NULL,
    low_hz                    REAL,
    high_hz                   REAL,
    longest_decay_s           REAL,
    minimum_snr_db            REAL,
    set_aside_s               TEXT,
    open_strings_hz           TEXT,
    fret_count                INTEGER,
    playing_order             TEXT,
    a4_hz                     REAL,
    lowest_pitch_hz           REAL,
    highest_pitch_hz          REAL,
    highest_partial_hz        REAL,
    expected                  TEXT,
    calibration_id            INTEGER REFERENCES calibration (id),
    stage                     TEXT,
    temperature_celsius       REAL,
    relative_humidity_percent REAL,
    rested_h                  REAL,
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
    added_mass_g              REAL,
    added_mass_place          TEXT,
    operator                  TEXT,
    note                      TEXT
) STRICT;

-- Sound that was lost while a recording was made.
CREATE TABLE capture_loss (
    capture_id INTEGER NOT NULL REFERENCES capture (id),
    ordinal    INTEGER NOT NULL,
    at_s       REAL NOT NULL,
    frames     INTEGER NOT NULL,
    reason     TEXT NOT NULL,
    PRIMARY KEY (capture_id, ordinal)
) STRICT, WITHOUT ROWID;
