package io.github.tapwright.sitting.live;

import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.TapAnalysis;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.tap.HeardTrack;
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

    private final List<Segment> segments;
    private final HoleState hole;
    private final TapSettings wanted;
    private final TapsSoFar before;

    TapLook(List<Segment> closed, Segment open, TapSettings settings, HoleState hole, TapsSoFar before) {
        List<Segment> all = new ArrayList<>(closed);
        all.add(open);
        this.segments = List.copyOf(all);
        this.hole = hole;
        this.wanted = settings;
        this.before = before;
    }

    private Segment open() {
        return segments.get(segments.size() - 1);
    }

    /**
     * The quick part: verdicts and curve, and then, if asked, the resonances.
     *
     * @return what can be told within a fraction of a second; the resonances are still those of the look before
     */
    public Verdicts verdicts() {
        List<HeardTrack> heard = segments.stream().map(s -> s.heard(wanted)).toList();
        TapSettings settings = inSegments();
        StrikeSet set = StrikeSet.judge(heard, settings);
        Optional<ResponseCurve> curve = set.decays().map(d -> ResponseCurveAverage.of(d, settings));
        TapsSoFar shown = new TapsSoFar(strikes(set), curve, before.resonances(), before.fittedStrikes(), notes(set));
        return new Verdicts(set, settings, shown);
    }

    /** The settings as the segments count recordings and time. */
    private TapSettings inSegments() {
        List<SetAside> unwanted = new ArrayList<>();
        for (int source = 0; source < segments.size(); source++) {
            unwanted.addAll(segments.get(source).setAside(source, wanted.setAside(), wanted));
        }
        return wanted.withSetAside(unwanted);
    }

    private List<Strike> strikes(StrikeSet set) {
        double from = segments.get(0).startSeconds();
        Stream<Strike> older = before.strikes().stream().filter(s -> s.onsetSeconds() < from);
        Stream<Strike> heard = set.strikes().stream().flatMap(s -> segments.get(s.source()).placed(s).stream());
        return Stream.concat(older, heard).toList();
    }

    /** What speaks of set-aside strikes counts from the start of the part, and is seen in the strikes anyway. */
    private static List<String> notes(StrikeSet set) {
        return set.notes().stream().filter(n -> !n.startsWith("no strike")).toList();
    }

    /** Strikes with their verdicts and the curve, and the way to the resonances. */
    public final class Verdicts {

        private final StrikeSet set;
        private final TapSettings settings;
        private final TapsSoFar shown;

        private Verdicts(StrikeSet set, TapSettings settings, TapsSoFar shown) {
            this.set = set;
            this.settings = settings;
            this.shown = shown;
        }

        /** When something struck in the open segment, from the start of the recording. */
        List<Double> openOnsetsSeconds() {
            return open().heard(wanted).onsetsSeconds().stream()
                    .map(onset -> onset + open().startSeconds())
                    .toList();
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
