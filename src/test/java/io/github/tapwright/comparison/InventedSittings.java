package io.github.tapwright.comparison;

import io.github.tapwright.InventedResults;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.Microphone;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.Placing;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SoundFacts;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Sittings made up for tests of comparisons. */
final class InventedSittings {

    static final Instant NOON = Instant.parse("2026-03-14T12:00:00Z");

    static final Conditions KNOWN = conditions(HoleState.OPEN, StringState.DAMPED, 20, 43, "knob at 4");

    static final BenchKnowledge BENCH =
            new BenchKnowledge(SetUpSpread.USUAL, ShopWindow.USUAL, HumiditySensitivities.ASSUMED);

    private InventedSittings() {}

    static Conditions conditions(HoleState hole, StringState strings, double celsius, double percent, String gain) {
        return new Conditions(
                Optional.of(Stage.STRUNG),
                new Air(Optional.of(celsius), Optional.of(percent)),
                new Strings(Optional.of(strings), Optional.of("normal"), Optional.empty()),
                hole,
                new Placing(Optional.of("foam"), Optional.of("knuckle"), Optional.of("bridge")),
                new Microphone(Optional.of("first"), Optional.of(600.0), Optional.of(gain)),
                Optional.empty(),
                Optional.of("the maker"),
                Optional.empty());
    }

    /** The same with a mass, or with more known about the air. */
    static Conditions with(Conditions c, Air air, Optional<AddedMass> mass) {
        return new Conditions(
                c.stage(), air, c.strings(), c.hole(), c.placing(), c.microphone(), mass, c.operator(), c.note());
    }

    static Sitting of(long id, TapResult result, Conditions conditions) {
        return of(id, new Findings.OfTaps(result), conditions);
    }

    static Sitting of(long id, Findings findings, Conditions conditions) {
        SoundFacts facts = new SoundFacts("WAV, 24 bit integer", 48000, 1, 0, 5, List.of());
        return new Sitting(
                new SittingId(id),
                new ShopNumber("117"),
                Moment.at(NOON),
                NOON,
                conditions,
                List.of(new KeptRecording(new Original(String.format("%064x", id), 1000, "wav"), "taps.wav", facts)),
                List.of(new Analysis(1, NOON, findings)),
                List.of(new GivenName(231.6, Optional.of("wolf near B flat"), NOON)),
                Optional.empty());
    }

    static SittingComparison compare(double shift, Conditions first, Conditions second) {
        return SittingComparison.of(
                of(1, InventedResults.result(1), first),
                of(2, InventedResults.result(shift), second),
                BENCH,
                Optional.empty());
    }
}
