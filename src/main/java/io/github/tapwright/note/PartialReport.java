package io.github.tapwright.note;

import io.github.tapwright.note.PartialDecay.Blended;
import io.github.tapwright.note.PartialDecay.OneStage;
import io.github.tapwright.note.PartialDecay.Refused;
import io.github.tapwright.note.PartialDecay.TwoStage;
import io.github.tapwright.statistics.Estimate;
import java.util.Locale;
import java.util.Optional;

/**
 * Turns one fitted partial into numbers with uncertainty, and refuses those the recording does not carry.
 */
final class PartialReport {

    private static final double LARGEST_RELATIVE_U = 0.25;
    private static final double LEAST_FALL_DB = 3;
    private static final double FAINT = 0.1;
    private static final double BEAT_SURENESS = 3;
    private static final double DB_PER_NEPER = 20 / Math.log(10);

    private final PartialFit fit;
    private final PartialEstimates estimates;
    private final double secondsBefore;
    private final double seconds;

    /**
     * Reads a fit.
     *
     * @param fit one sine or two
     * @param secondsBefore how long before the stretch the string was plucked
     * @param seconds length of the stretch
     */
    PartialReport(PartialFit fit, double secondsBefore, double seconds) {
        this.fit = fit;
        this.estimates = new PartialEstimates(fit);
        this.secondsBefore = secondsBefore;
        this.seconds = seconds;
    }

    Optional<Estimate> frequencyHz() {
        return estimates.of(ToneView::meanHz);
    }

    Optional<Estimate> levelDb() {
        return estimates.of(view -> view.levelDb(secondsBefore));
    }

    PartialDecay decay() {
        return fit.tones().size() == 1 ? oneStage() : twoStages();
    }

    private PartialDecay oneStage() {
        Optional<Estimate> time = estimates.of(view -> view.decayTimeSeconds(0));
        double fallDb =
                60 * seconds / (DecayingTone.SIXTY_DB / fit.tones().get(0).sigma());
        if (fallDb < LEAST_FALL_DB) {
            return new Refused(String.format(
                    Locale.ROOT, "it falls by %.1f dB only in the %.2f s recorded; record longer", fallDb, seconds));
        }
        return time.filter(PartialReport::isSure)
                .<PartialDecay>map(OneStage::new)
                .orElseGet(() -> new Refused("too weak or too disturbed: the decay time is not known to 25 %"));
    }

    private static boolean isSure(Estimate time) {
        return time.standardUncertainty() <= LARGEST_RELATIVE_U * time.value();
    }

    private PartialDecay twoStages() {
        int fast = fit.tones().get(0).sigma() >= fit.tones().get(1).sigma() ? 0 : 1;
        int slow = 1 - fast;
        Optional<Estimate> early = estimates.of(view -> view.decayTimeSeconds(fast));
        Optional<Estimate> late = estimates.of(view -> view.decayTimeSeconds(slow));
        Optional<Estimate> whole = estimates.of(view -> view.wholeDecayTimeSeconds(secondsBefore));
        Optional<Estimate> beat = estimates.of(view -> view.hz(slow) - view.hz(fast));
        Optional<Estimate> lateLevel = estimates.of(view -> 20 * Math.log10(view.amplitude(slow) / view.amplitude(fast))
                + DB_PER_NEPER * (view.sigma(slow) - view.sigma(fast)) * secondsBefore);
        if (early.isEmpty() || late.isEmpty() || whole.isEmpty() || beat.isEmpty() || lateLevel.isEmpty()) {
            return new Refused("two decays too alike to be told apart; record longer or pluck in another direction");
        }
        if (!isSure(early.orElseThrow()) || !isSure(late.orElseThrow())) {
            String reason = String.format(
                    Locale.ROOT,
                    "dies away in two stages or beats, but %.2f s of this quality do not tell how fast each is",
                    seconds);
            return isSure(whole.orElseThrow()) ? new Blended(whole.orElseThrow(), reason) : new Refused(reason);
        }
        return new TwoStage(
                early.orElseThrow(),
                late.orElseThrow(),
                lateLevel.orElseThrow(),
                whole.orElseThrow(),
                beat.orElseThrow(),
                beats(beat.orElseThrow(), fast, slow));
    }

    /** A whole beat fits in while neither sine is less than {@value #FAINT} of the other, and its rate is sure. */
    private boolean beats(Estimate beat, int fast, int slow) {
        return Math.abs(beat.value()) * togetherSeconds(fast, slow) > 1
                && Math.abs(beat.value()) > BEAT_SURENESS * beat.standardUncertainty();
    }

    /** How long, within the stretch, the two are of like strength: the slow one gains on the fast one all the time. */
    private double togetherSeconds(int fast, int slow) {
        double ahead = Math.log(fit.amplitude(slow) / fit.amplitude(fast));
        double gain = Math.max(
                1e-9, fit.tones().get(fast).sigma() - fit.tones().get(slow).sigma());
        double from = Math.max(0, (Math.log(FAINT) - ahead) / gain);
        double until = Math.min(seconds, (-Math.log(FAINT) - ahead) / gain);
        return Math.max(0, until - from);
    }
}
