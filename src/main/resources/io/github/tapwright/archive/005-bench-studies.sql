-- A study of how far setting up again moves figures: which sittings it rests on. Its figures are computed from
-- them whenever they are asked for. Studies are only ever added; the latest one holds.

CREATE TABLE bench_study (
    id      INTEGER PRIMARY KEY AUTOINCREMENT,
    kept_at TEXT NOT NULL
) STRICT;

CREATE TABLE bench_study_sitting (
    study_id   INTEGER NOT NULL REFERENCES bench_study (id),
    ordinal    INTEGER NOT NULL,
    sitting_id INTEGER NOT NULL REFERENCES sitting (id),
    PRIMARY KEY (study_id, ordinal)
) STRICT, WITHOUT ROWID;
