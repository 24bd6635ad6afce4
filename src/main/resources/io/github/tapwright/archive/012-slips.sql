-- Sittings the maker set aside: kept and shown, but used for nothing beyond themselves. Rows are only ever added; the
-- latest one of a sitting holds, and one without a reason takes the sitting back into use.

CREATE TABLE sitting_set_aside (
    sitting_id INTEGER NOT NULL REFERENCES sitting (id),
    ordinal    INTEGER NOT NULL,
    reason     TEXT,
    said_at    TEXT NOT NULL,
    PRIMARY KEY (sitting_id, ordinal)
) STRICT, WITHOUT ROWID;

-- Calibrations the maker withdrew, told in the same way: kept with their tones, but no new sitting uses them, and levels that rest
-- on one are no sound pressure levels.

CREATE TABLE calibration_withdrawn (
    calibration_id INTEGER NOT NULL REFERENCES calibration (id),
    ordinal        INTEGER NOT NULL,
    reason         TEXT,
    said_at        TEXT NOT NULL,
    PRIMARY KEY (calibration_id, ordinal)
) STRICT, WITHOUT ROWID;
