package io.github.tapwright.sitting.live;

import io.github.tapwright.tap.GrowingTrack;
import io.github.tapwright.tap.HeardTrack;
import io.github.tapwright.tap.SetAside;
import io.github.tapwright.tap.Strike;
import io.github.tapwright.tap.TapSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A stretch of a running recording, listened to once, by whoever looks first. */
final class Segment {

    /** A segment that begins in the middle of a sound makes its own beginning look like a contact. */
    private static final double EDGE_SECONDS = 0.02;

    private final GrowingTrack.Part part;
    private Optional<HeardTrack> heard = Optional.empty();

    Segment(GrowingTrack.Part part) {
        this.part = part;
    }

    synchronized HeardTrack heard(TapSettings settings) {
        HeardTrack known = heard.orElseGet(() -> HeardTrack.of(part.track(), settings));
        heard = Optional.of(known);
        return known;
    }

    double startSeconds() {
        return part.startSeconds();
    }

    double endSeconds() {
        return part.endSeconds();
    }

    /** What is set aside in this segment: what the maker does not want, and what its own beginning made. */
    List<SetAside> setAside(int source, List<SetAside> unwanted, TapSettings settings) {
        List<SetAside> here = new ArrayList<>();
        for (SetAside strike : unwanted) {
            double onset = strike.onsetSeconds() - startSeconds();
            if (onset >= 0 && strike.onsetSeconds() < endSeconds()) {
                here.add(new SetAside(source, onset));
            }
        }
        for (double onset : heard(settings).onsetsSeconds()) {
            if (isEdge(onset)) {
                here.add(new SetAside(source, onset));
            }
        }
        return here;
    }

    private boolean isEdge(double onset) {
        return startSeconds() > 0 && onset < EDGE_SECONDS;
    }

    /** A strike in the time of the whole recording; empty if it is none but the segment's beginning. */
    Optional<Strike> placed(Strike strike) {
        return isEdge(strike.onsetSeconds())
                ? Optional.empty()
                : Optional.of(new Strike(
                        0,
                        strike.onsetSeconds() + startSeconds(),
                        strike.peakDbfs(),
                        strike.snrDb(),
                        strike.rejections()));
    }
}
