-- A mass stuck to the instrument for a sitting (NULL: none), and for how many hours the instrument had lain in the
-- room's air (NULL: unknown). The trigger that keeps what an edit replaces is made again, so that it keeps these too.

ALTER TABLE sitting ADD COLUMN added_mass_g REAL;
ALTER TABLE sitting ADD COLUMN added_mass_place TEXT;
ALTER TABLE sitting ADD COLUMN rested_h REAL;

ALTER TABLE sitting_before ADD COLUMN added_mass_g REAL;
ALTER TABLE sitting_before ADD COLUMN added_mass_place TEXT;
ALTER TABLE sitting_before ADD COLUMN rested_h REAL;

DROP TRIGGER keep_sitting_before;

CREATE TRIGGER keep_sitting_before BEFORE UPDATE ON sitting
BEGIN
    INSERT INTO sitting_before (replaced_at, sitting_id, instrument_id, taken_at, time_known, stage, temperature_celsius, relative_humidity_percent,
        strings, string_set, strings_fitted_on, hole, support, strike_tool, strike_place, microphone,
        microphone_distance_mm, gain, operator, note, added_mass_g, added_mass_place, rested_h)
    VALUES (strftime('%Y-%m-%dT%H:%M:%f000000Z', 'now'), OLD.id, OLD.instrument_id, OLD.taken_at,
        OLD.time_known, OLD.stage, OLD.temperature_celsius,
        OLD.relative_humidity_percent, OLD.strings, OLD.string_set, OLD.strings_fitted_on, OLD.hole, OLD.support,
        OLD.strike_tool, OLD.strike_place, OLD.microphone, OLD.microphone_distance_mm, OLD.gain, OLD.operator,
        OLD.note, OLD.added_mass_g, OLD.added_mass_place, OLD.rested_h);
END;
