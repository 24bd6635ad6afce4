package io.github.tapwright.note;

/**
 * Physical numbers of one or two decaying sines, read from the plain row of a fit's parameters: cosine and sine strength
 * of each, then ω and ln σ of each.
 */
final class ToneView {

    private static final double LEAST = 1e-300;
    private static final double CLOSE = 1e-12;
    private static final int MOST_STEPS = 50;

    private final double[] parameters;
    private final int tones;

    ToneView(double[] parameters) {
        this.parameters = parameters;
        this.tones = parameters.length / 4;
    }

    double hz(int tone) {
        return parameters[2 * tones + 2 * tone] / (2 * Math.PI);
    }

    double sigma(int tone) {
        return Math.exp(parameters[2 * tones + 2 * tone + 1]);
    }

    /** Time for 60 dB, ln(1000)/σ. */
    double decayTimeSeconds(int tone) {
        return DecayingTone.SIXTY_DB / sigma(tone);
    }

    private double power(int tone) {
        return Math.pow(parameters[2 * tone], 2) + Math.pow(parameters[2 * tone + 1], 2) + LEAST;
    }

    /** Amplitude at the beginning, re full scale. */
    double amplitude(int tone) {
        return Math.sqrt(power(tone));
    }

    /** Mean frequency, each sine weighted by its energy |c|²/σ. */
    double meanHz() {
        double sum = 0;
        double weights = 0;
        for (int m = 0; m < tones; m++) {
            double weight = power(m) / sigma(m);
            sum += weight * hz(m);
            weights += weight;
        }
        return sum / weights;
    }

    /** Level some time before the beginning of the stretch: 10·lg Σ|c|²·exp(2σt), dB re a full-scale sine. */
    double levelDb(double secondsBefore) {
        return 10 * Math.log10(powerAt(-secondsBefore));
    }

    private double powerAt(double seconds) {
        double sum = 0;
        for (int m = 0; m < tones; m++) {
            sum += power(m) * Math.exp(-2 * sigma(m) * seconds);
        }
        return sum;
    }

    /**
     * Time until the power, beats averaged out, has fallen by 60 dB since some time before the stretch.
     *
     * <p>By Newton's method on the logarithm of the power: it is convex and falls, so that from the left no step goes too far.
     */
    double wholeDecayTimeSeconds(double secondsBefore) {
        double target = Math.log(1e-6 * powerAt(-secondsBefore));
        double seconds = 0;
        double step;
        int steps = 0;
        do {
            double power = powerAt(seconds - secondsBefore);
            step = (Math.log(power) - target) * power / lossAt(seconds - secondsBefore);
            seconds += step;
        } while (step > CLOSE * seconds && ++steps < MOST_STEPS);
        return seconds;
    }

    /** How fast the power falls: −dP/dt. */
    private double lossAt(double seconds) {
        double sum = 0;
        for (int m = 0; m < tones; m++) {
            sum += 2 * sigma(m) * power(m) * Math.exp(-2 * sigma(m) * seconds);
        }
        return sum;
    }
}
