-- A recorded calibrator tone and what it says about one microphone, input and gain. Calibrations are only ever
-- added. _u is the standard uncertainty, _dof its degrees of freedom (infinite where as good as known).

CREATE TABLE calibration (
    id                    INTEGER PRIMARY KEY AUTOINCREMENT,
    taken_at              TEXT NOT NULL,
    time_known            INTEGER NOT NULL CHECK (time_known IN (0, 1)),
    added_at              TEXT NOT NULL,
    microphone            TEXT,
    gain                  TEXT,
    sha256                TEXT NOT NULL REFERENCES original (sha256),
    file_name             TEXT NOT NULL,
    format                TEXT NOT NULL,
    sample_rate_hz        REAL NOT NULL,
    channel_count         INTEGER NOT NULL,
    channel_used          INTEGER NOT NULL,
    duration_s            REAL NOT NULL,
    tone_level_db         REAL NOT NULL,
    tone_tolerance_db     REAL NOT NULL,
    full_scale_level_db   REAL NOT NULL,
    full_scale_level_u_db REAL NOT NULL,
    full_scale_level_dof  REAL NOT NULL,
    tone_frequency_hz     REAL NOT NULL,
    fluctuation_db        REAL NOT NULL,
    impurity_percent      REAL NOT NULL,
    steady_s              REAL NOT NULL,
    method_version        TEXT NOT NULL
) STRICT;
CREATE INDEX calibration_by_time ON calibration (taken_at, id);
CREATE INDEX calibration_of_original ON calibration (sha256);

CREATE TABLE calibration_notice (
    calibration_id INTEGER NOT NULL REFERENCES calibration (id),
    ordinal        INTEGER NOT NULL,
    notice         TEXT NOT NULL,
    PRIMARY KEY (calibration_id, ordinal)
) STRICT, WITHOUT ROWID;
