-- What an edit replaces stays: the row as it was, and when it was replaced. The database does it by itself,
-- so that no program can forget.

CREATE TABLE instrument_before (
    id                       INTEGER PRIMARY KEY AUTOINCREMENT,
    replaced_at              TEXT NOT NULL,
    instrument_id            INTEGER NOT NULL REFERENCES instrument (id),
    shop_number              TEXT NOT NULL,
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
CREATE INDEX before_of_instrument ON instrument_before (instrument_id, id);

CREATE TRIGGER keep_instrument_before BEFORE UPDATE ON instrument
BEGIN
    INSERT INTO instrument_before (replaced_at, instrument_id, shop_number, kind, scale_length_mm, string_count,
        soundhole_diameter_mm, body_notes, construction, outer_skin, outer_skin_mm, core, core_mm, inner_skin,
        inner_skin_mm, bracing, nickname, notes)
    VALUES (strftime('%Y-%m-%dT%H:%M:%f000000Z', 'now'), OLD.id, OLD.shop_number, OLD.kind, OLD.scale_length_mm, OLD.string_count,
        OLD.soundhole_diameter_mm, OLD.body_notes, OLD.construction, OLD.outer_skin, OLD.outer_skin_mm, OLD.core,
        OLD.core_mm, OLD.inner_skin, OLD.inner_skin_mm, OLD.bracing, OLD.nickname, OLD.notes);
END;

CREATE TABLE sitting_before (
    id                        INTEGER PRIMARY KEY AUTOINCREMENT,
    replaced_at               TEXT NOT NULL,
    sitting_id                INTEGER NOT NULL REFERENCES sitting (id),
    instrument_id             INTEGER NOT NULL,
    taken_at                  TEXT NOT NULL,
    time_known                INTEGER NOT NULL,
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
CREATE INDEX before_of_sitting ON sitting_before (sitting_id, id);

CREATE TRIGGER keep_sitting_before BEFORE UPDATE ON sitting
BEGIN
    INSERT INTO sitting_before (replaced_at, sitting_id, instrument_id, taken_at, time_known, stage, temperature_celsius, relative_humidity_percent,
        strings, string_set, strings_fitted_on, hole, support, strike_tool, strike_place, microphone,
        microphone_distance_mm, gain, operator, note)
    VALUES (strftime('%Y-%m-%dT%H:%M:%f000000Z', 'now'), OLD.id, OLD.instrument_id, OLD.taken_at,
        OLD.time_known, OLD.stage, OLD.temperature_celsius,
        OLD.relative_humidity_percent, OLD.strings, OLD.string_set, OLD.strings_fitted_on, OLD.hole, OLD.support,
        OLD.strike_tool, OLD.strike_place, OLD.microphone, OLD.microphone_distance_mm, OLD.gain, OLD.operator,
        OLD.note);
END;
