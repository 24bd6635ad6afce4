package io.github.tapwright.demo;

import io.github.tapwright.mode.HoleState;
import io.github.tapwright.synthesis.PlantedFault;
import java.util.Map;

/**
 * One invented visit to the microphone.
 *
 * @param number from 1, also the seed of all chance in it
 * @param instrument who came
 * @param taken day and time in the workshop, "2024-03-05T10:10"
 * @param stage how far it had come
 * @param room the air
 * @param hole open or covered
 * @param drift what time has done to the top since it was strung: factor on the main top's resonance
 * @param faults planted at strikes counted from 0
 * @param humDbfs level of mains hum, dB re full scale; minus infinity for none
 * @param note the maker's word
 */
record DemoSitting(
        int number,
        DemoInstrument instrument,
        String taken,
        DemoStage stage,
        Room room,
        HoleState hole,
        double drift,
        Map<Integer, PlantedFault> faults,
        double humDbfs,
        String note) {

    /** Air of the room. */
    record Room(double temperatureC, double relativeHumidityPercent) {}

    String file() {
        String covered = hole == HoleState.COVERED ? "-hole-covered" : "";
        return "%s-%s-%s%s.flac"
                .formatted(instrument.shopNumber(), taken.substring(0, 10), stage.words.replace(' ', '-'), covered);
    }

    static DemoSitting at(int number, DemoInstrument instrument, String taken, DemoStage stage, Room room) {
        return new DemoSitting(
                number, instrument, taken, stage, room, HoleState.OPEN, 1, Map.of(), Double.NEGATIVE_INFINITY, "");
    }

    DemoSitting covered() {
        return new DemoSitting(number, instrument, taken, stage, room, HoleState.COVERED, drift, faults, humDbfs, note);
    }

    DemoSitting drifted(double factor) {
        return new DemoSitting(number, instrument, taken, stage, room, hole, factor, faults, humDbfs, note);
    }

    DemoSitting with(Map<Integer, PlantedFault> planted) {
        return new DemoSitting(number, instrument, taken, stage, room, hole, drift, planted, humDbfs, note);
    }

    DemoSitting hum(double dbfs) {
        return new DemoSitting(number, instrument, taken, stage, room, hole, drift, faults, dbfs, note);
    }

    DemoSitting note(String words) {
        return new DemoSitting(number, instrument, taken, stage, room, hole, drift, faults, humDbfs, words);
    }
}
