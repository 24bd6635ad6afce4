package io.github.tapwright.sitting;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.mode.HoleState;
import java.util.List;
import java.util.Optional;

/**
 * A sitting on one line of a list.
 *
 * @param id its number in the archive
 * @param instrument whose sitting it was
 * @param takenAt when the recordings were made
 * @param stage how far the instrument had come; empty if unknown
 * @param air temperature and humidity
 * @param hole soundhole open or covered
 * @param loaded whether a mass was stuck on
 * @param procedure what it was made for, a {@link Procedure#key()}
 * @param recordingCount how many recordings it has
 * @param resonances those of the latest analysis, lowest first
 * @param setAside why it is used for nothing beyond itself; empty if it is in use
 */
public record SittingSummary(
        SittingId id,
        ShopNumber instrument,
        Moment takenAt,
        Optional<Stage> stage,
        Air air,
        HoleState hole,
        boolean loaded,
        String procedure,
        int recordingCount,
        List<Line> resonances,
        Optional<OutOfUse> setAside) {

    /** Keeps a copy of the list. */
    public SittingSummary {
        resonances = List.copyOf(resonances);
    }

    /**
     * Whether its taps speak of the body as it is played: hole not covered, no mass stuck on, not set aside.
     *
     * @return false for these, and for sittings that were not made for taps
     */
    public boolean tapsTheBodyAsItIs() {
        return wasMadeForTheBodyAsItIs() && setAside.isEmpty();
    }

    /**
     * The same, set aside or not.
     *
     * @return true for sittings of taps without a covered hole and without a mass
     */
    public boolean wasMadeForTheBodyAsItIs() {
        return procedure.equals(Procedure.BodyTaps.KEY) && !loaded && hole != HoleState.COVERED;
    }

    /**
     * One resonance on that line.
     *
     * @param frequencyHz where
     * @param name the name that holds; empty if there is none
     */
    public record Line(double frequencyHz, Optional<String> name) {}
}
