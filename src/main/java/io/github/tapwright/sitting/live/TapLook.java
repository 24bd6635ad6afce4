package io.github.tapwright.sitting.live;

import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.TapAnalysis;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.tap.GrowingTrack;
import io.github.tapwright.tap.ResponseCurve;
import io.github.tapwright.tap.ResponseCurveAverage;
import io.github.tapwright.tap.SetAside;
import io.github.tapwright.tap.Strike;
import io.github.tapwright.tap.StrikeSet;
import io.github.tapwright.tap.TapSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The taps heard by one moment, worked on by one thread while others go on recording. */
public final class TapLook {

    /** A part that begins in the middle of a sound makes its own beginning look like a contact. */
    private static final double EDGE_SECONDS = 0.06;

    private final GrowingTrack.Part part;
    private final HoleState hole;
    private final TapSettings settings;
    private final TapsSoFar before;

    TapLook(GrowingTrack.Part part, TapSettings settings, HoleState hole, TapsSoFar before) {
        this.part = part;
        this.hole = hole;
        this.before = before;
        this.settings = settings.withSetAside(inPart(settings.setAside()));
    }

    private List<SetAside> inPart(List<SetAside> unwanted) {
        List<SetAside> inPart = new ArrayList<>();
        if (isCut()) {
            inPart.add(new SetAside(0, 0));
        }
        for (SetAside strike : unwanted) {
            double onset = strike.onsetSeconds() - part.startSeconds();
            if (strike.source() == 0 && onset >= 0) {
                inPart.add(new SetAside(0, onset));
            }
        }
        return inPart;
    }

    private boolean isCut() {
        return part.startSeconds() > 0;
    }

    /**
     * Until when was listened.
     *
     * @return seconds from the start of the recording
     */
    public double untilSeconds() {
        return part.startSeconds() + part.track().durationSeconds();
    }

    /**
     * The quick part: verdicts and curve, and then, if asked, the resonances.
     *
     * @return what can be told within a fraction of a second; the resonances are still those of the look before
     */
    public Verdicts verdicts() {
        StrikeSet set = StrikeSet.find(List.of(part.track()), settings);
        Optional<ResponseCurve> curve = set.decays().map(d -> ResponseCurveAverage.of(d, settings));
        TapsSoFar shown =
                new TapsSoFar(strikes(set), curve, before.resonances(), before.fittedStrikes(), notes(set));
        return new Verdicts(set, shown);
    }

    private List<Strike> strikes(StrikeSet set) {
        double edge = isCut() ? part.startSeconds() + EDGE_SECONDS : 0;
        Stream<Strike> older = before.strikes().stream().filter(s -> s.onsetSeconds() < edge);
        Stream<Strike> heard = set.strikes().stream()
                .map(s -> new Strike(
                        0, s.onsetSeconds() + part.startSeconds(), s.peakDbfs(), s.snrDb(), s.rejections()))
                .filter(s -> s.onsetSeconds() >= edge);
        return Stream.concat(older, heard).toList();
    }

    /** What speaks of set-aside strikes counts from the start of the part, and is seen in the strikes anyway. */
    private static List<String> notes(StrikeSet set) {
        return set.notes().stream().filter(n -> !n.startsWith("no strike")).toList();
    }

    /** Strikes with their verdicts and the curve, and the way to the resonances. */
    public final class Verdicts {

        private final StrikeSet set;
        private final TapsSoFar shown;

        private Verdicts(StrikeSet set, TapsSoFar shown) {
            this.set = set;
            this.shown = shown;
        }

        /**
         * What can be shown at once.
         *
         * @return the resonances among it are older
         */
        public TapsSoFar shown() {
            return shown;
        }

        /**
         * The slow part: fits the resonances, which takes some tenths of a second for each ten strikes.
         *
         * @return the same, with resonances of today
         */
        public TapsSoFar fitted() {
            TapResult result = TapAnalysis.analyse(set, settings, hole);
            int used = set.decays().map(d -> d.count()).orElse(0);
            return new TapsSoFar(shown.strikes(), shown.curve(), result.resonances(), used, shown.notes());
        }
    }
}
