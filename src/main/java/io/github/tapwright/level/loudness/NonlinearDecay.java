package io.github.tapwright.level.loudness;

/**
 * How the loudness of one critical band dies away after a sound stops: quickly after a short sound, slowly after
 * a long one, because of a store that long sounds have filled.
 *
 * <p>While falling, output u and store v follow v' = (u − v)/τ_var and a coupled decay whose eigenvalues solve
 * λ² + λ·(τ_var + τ_long)/(τ_var·τ_short) + 1/(τ_short·τ_var) = 0; once the store has caught up, both fall with
 * τ_long. A rising input passes at once. τ_short = 5 ms, τ_long = 15 ms, τ_var = 75 ms. Steps are exact solutions.
 * Source: [ISO532-1], annex A.
 */
final class NonlinearDecay {

    private static final double SHORT_SECONDS = 0.005;
    private static final double LONG_SECONDS = 0.015;
    private static final double STORE_SECONDS = 0.075;

    private final double outputFromOutput;
    private final double outputFromStore;
    private final double storeFromOutput;
    private final double storeFromStore;
    private final double jointDecay;
    private final double storeDecay;
    private double output;
    private double store;

    NonlinearDecay(double stepSeconds) {
        double halfSum = (STORE_SECONDS + LONG_SECONDS) / (2 * STORE_SECONDS * SHORT_SECONDS);
        double root = Math.sqrt(halfSum * halfSum - 1 / (SHORT_SECONDS * STORE_SECONDS));
        double slowRate = root - halfSum;
        double fastRate = -root - halfSum;
        double slow = Math.exp(slowRate * stepSeconds);
        double fast = Math.exp(fastRate * stepSeconds);
        double slowMix = STORE_SECONDS * slowRate + 1;
        double fastMix = STORE_SECONDS * fastRate + 1;
        double norm = STORE_SECONDS * (slowRate - fastRate);
        // the exponential of the system's matrix over one step
        outputFromOutput = (slowMix * slow - fastMix * fast) / norm;
        outputFromStore = -slowMix * fastMix * (slow - fast) / norm;
        storeFromOutput = (slow - fast) / norm;
        storeFromStore = (slowMix * fast - fastMix * slow) / norm;
        jointDecay = Math.exp(-stepSeconds / LONG_SECONDS);
        storeDecay = Math.exp(-stepSeconds / STORE_SECONDS);
    }

    /** One step: the output for an input. */
    double step(double input) {
        if (input < output) {
            fall(input);
        } else {
            output = input;
            store = output > store ? output + (store - output) * storeDecay : output;
        }
        return output;
    }

    private void fall(double input) {
        if (output > store) {
            double nextStore = output * storeFromOutput + store * storeFromStore;
            output = Math.max(input, output * outputFromOutput + store * outputFromStore);
            store = Math.min(nextStore, output);
        } else {
            output = Math.max(input, output * jointDecay);
            store = output;
        }
    }
}
