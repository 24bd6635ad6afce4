-- Sittings for a run of notes over the fingerboard, and for repeated plucks of the open strings. Like analyses of
-- taps, these are only ever added; number counts them within a sitting, from 1. NULL means: not found, and a column
-- of reasons beside it says why. _u is the standard uncertainty, _dof its degrees of freedom.

ALTER TABLE sitting ADD COLUMN procedure TEXT NOT NULL DEFAULT 'taps';

CREATE TABLE note_analysis (
    id                 INTEGER PRIMARY KEY AUTOINCREMENT,
    sitting_id         INTEGER NOT NULL REFERENCES sitting (id),
    number             INTEGER NOT NULL,
    made_at            TEXT NOT NULL,
    method_version     TEXT NOT NULL,
    playing_order      TEXT NOT NULL,
    fret_count         INTEGER NOT NULL,
    a4_hz              REAL NOT NULL,
    lowest_pitch_hz    REAL NOT NULL,
    highest_pitch_hz   REAL NOT NULL,
    highest_partial_hz REAL NOT NULL,
    expected           TEXT,
    UNIQUE (sitting_id, number)
) STRICT;

-- string counts from 1, the highest.
CREATE TABLE note_open_string (
    analysis_id INTEGER NOT NULL REFERENCES note_analysis (id),
    string      INTEGER NOT NULL,
    hz          REAL NOT NULL,
    PRIMARY KEY (analysis_id, string)
) STRICT, WITHOUT ROWID;

CREATE TABLE note_analysis_warning (
    analysis_id INTEGER NOT NULL REFERENCES note_analysis (id),
    ordinal     INTEGER NOT NULL,
    warning     TEXT NOT NULL,
    PRIMARY KEY (analysis_id, ordinal)
) STRICT, WITHOUT ROWID;

-- source is the place of the recording within the sitting; attack_at_s is when the note begins there.
CREATE TABLE note (
    analysis_id            INTEGER NOT NULL REFERENCES note_analysis (id),
    ordinal                INTEGER NOT NULL,
    source                 INTEGER NOT NULL,
    attack_at_s            REAL NOT NULL,
    string                 INTEGER,
    fret                   INTEGER,
    method_version         TEXT NOT NULL,
    pitch_hz               REAL,
    pitch_u_hz             REAL,
    pitch_dof              REAL,
    pitch_refusal          TEXT,
    inharmonicity          REAL,
    inharmonicity_u        REAL,
    inharmonicity_dof      REAL,
    inharmonicity_refusal  TEXT,
    onset_s                REAL,
    attack_s               REAL,
    spectral_centroid_hz   REAL,
    series_scatter_cents   REAL,
    disturbance            TEXT,
    disturbance_at_s       REAL,
    heard_db               REAL NOT NULL,
    channel_used           INTEGER NOT NULL,
    duration_s             REAL NOT NULL,
    laeq_db                REAL,
    lceq_db                REAL,
    lzeq_db                REAL,
    lafmax_db              REAL,
    lasmax_db              REAL,
    lae_db                 REAL,
    lcpeak_db              REAL,
    level_duration_s       REAL,
    PRIMARY KEY (analysis_id, ordinal)
) STRICT, WITHOUT ROWID;

-- range is EDT, T20 or T30.
CREATE TABLE note_decay (
    analysis_id             INTEGER NOT NULL,
    note                    INTEGER NOT NULL,
    range                   TEXT NOT NULL,
    decay_time_s            REAL,
    decay_time_u_s          REAL,
    decay_time_dof          REAL,
    non_linearity_per_mille REAL,
    refusal                 TEXT,
    PRIMARY KEY (analysis_id, note, range),
    FOREIGN KEY (analysis_id, note) REFERENCES note (analysis_id, ordinal)
) STRICT, WITHOUT ROWID;

CREATE TABLE note_warning (
    analysis_id INTEGER NOT NULL,
    note        INTEGER NOT NULL,
    ordinal     INTEGER NOT NULL,
    warning     TEXT NOT NULL,
    PRIMARY KEY (analysis_id, note, ordinal),
    FOREIGN KEY (analysis_id, note) REFERENCES note (analysis_id, ordinal)
) STRICT, WITHOUT ROWID;

-- One stage: late_ and beat_ columns are NULL. refusal says why the stages are not known; then every decay column is
-- NULL but decay_time, if the whole is known.
CREATE TABLE note_partial (
    analysis_id        INTEGER NOT NULL,
    note               INTEGER NOT NULL,
    number             INTEGER NOT NULL,
    frequency_hz       REAL NOT NULL,
    frequency_u_hz     REAL NOT NULL,
    frequency_dof      REAL NOT NULL,
    level_db           REAL NOT NULL,
    level_u_db         REAL NOT NULL,
    level_dof          REAL NOT NULL,
    harmonic_cents     REAL NOT NULL,
    series_cents       REAL NOT NULL,
    fits_series        INTEGER NOT NULL CHECK (fits_series IN (0, 1)),
    decay_time_s       REAL,
    decay_time_u_s     REAL,
    decay_time_dof     REAL,
    early_time_s       REAL,
    early_time_u_s     REAL,
    early_time_dof     REAL,
    late_time_s        REAL,
    late_time_u_s      REAL,
    late_time_dof      REAL,
    late_level_db      REAL,
    late_level_u_db    REAL,
    late_level_dof     REAL,
    beat_hz            REAL,
    beat_u_hz          REAL,
    beat_dof           REAL,
    beats              INTEGER CHECK (beats IN (0, 1)),
    refusal            TEXT,
    PRIMARY KEY (analysis_id, note, number),
    FOREIGN KEY (analysis_id, note) REFERENCES note (analysis_id, ordinal)
) STRICT, WITHOUT ROWID;

-- Notes that die away much faster than their neighbours.
CREATE TABLE fast_decay (
    analysis_id  INTEGER NOT NULL REFERENCES note_analysis (id),
    ordinal      INTEGER NOT NULL,
    string       INTEGER NOT NULL,
    fret         INTEGER NOT NULL,
    decay_time_s REAL NOT NULL,
    usual_s      REAL NOT NULL,
    deviations   REAL NOT NULL,
    PRIMARY KEY (analysis_id, ordinal)
) STRICT, WITHOUT ROWID;

-- Levels are dB SPL where there is a calibration, else dB re full scale.
CREATE TABLE pluck_analysis (
    id             INTEGER PRIMARY KEY AUTOINCREMENT,
    sitting_id     INTEGER NOT NULL REFERENCES sitting (id),
    number         INTEGER NOT NULL,
    made_at        TEXT NOT NULL,
    method_version TEXT NOT NULL,
    fret_count     INTEGER NOT NULL,
    calibration_id INTEGER REFERENCES calibration (id),
    UNIQUE (sitting_id, number)
) STRICT;

CREATE TABLE pluck_open_string (
    analysis_id INTEGER NOT NULL REFERENCES pluck_analysis (id),
    string      INTEGER NOT NULL,
    hz          REAL NOT NULL,
    PRIMARY KEY (analysis_id, string)
) STRICT, WITHOUT ROWID;

CREATE TABLE pluck (
    analysis_id        INTEGER NOT NULL REFERENCES pluck_analysis (id),
    ordinal            INTEGER NOT NULL,
    source             INTEGER NOT NULL,
    attack_at_s        REAL NOT NULL,
    string             INTEGER,
    lafmax_db          REAL,
    momentary_max_lufs REAL,
    maximum_sone       REAL,
    PRIMARY KEY (analysis_id, ordinal)
) STRICT, WITHOUT ROWID;

CREATE TABLE pluck_warning (
    analysis_id INTEGER NOT NULL,
    pluck       INTEGER NOT NULL,
    ordinal     INTEGER NOT NULL,
    warning     TEXT NOT NULL,
    PRIMARY KEY (analysis_id, pluck, ordinal),
    FOREIGN KEY (analysis_id, pluck) REFERENCES pluck (analysis_id, ordinal)
) STRICT, WITHOUT ROWID;
