-- What lists and questions about many sittings read of an analysis of taps, packed so that ten thousand of them can be
-- read in a moment. It repeats what resonance and response_curve say, is written together with them, and can be made
-- from them again; TapDigest says what the bytes mean. third_octaves is NULL where there is no curve.

CREATE TABLE tap_digest (
    analysis_id   INTEGER PRIMARY KEY REFERENCES analysis (id),
    resonances    BLOB NOT NULL,
    third_octaves BLOB
) STRICT;
