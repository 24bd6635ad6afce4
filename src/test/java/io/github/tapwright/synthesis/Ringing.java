package io.github.tapwright.synthesis;

import java.util.List;
import org.hipparchus.complex.Complex;

/** The sound of a bank of modes after one contact, evaluated at sample times. */
public final class Ringing {

    private static final double INAUDIBLE = 1e-9;

    private final List<TrueMode> modes;
    private final double directGain;
    private final double rateHz;

    /**
     * A bank of modes.
     *
     * @param modes what rings
     * @param directGain what follows the force itself at once, as the pressure of a piston does; 0 for none
     * @param rateHz sample rate
     */
    public Ringing(List<TrueMode> modes, double directGain, double rateHz) {
        this.modes = List.copyOf(modes);
        this.directGain = directGain;
        this.rateHz = rateHz;
    }

    /**
     * Adds one contact's sound to samples.
     *
     * @param samples changed in place
     * @param onsetSeconds when the contact begins, anywhere between samples
     * @param contact its shape
     * @param strength its impulse
     * @param modeFactors one for each mode
     */
    public void addTo(
            double[] samples, double onsetSeconds, HalfSineContact contact, double strength, List<Double> modeFactors) {
        for (int m = 0; m < modes.size(); m++) {
            addMode(samples, onsetSeconds, contact, modes.get(m), strength * modeFactors.get(m));
        }
        int first = firstSample(onsetSeconds);
        for (int n = first; n < samples.length && n / rateHz - onsetSeconds <= contact.durationSeconds(); n++) {
            samples[n] += strength * directGain * contact.force(n / rateHz - onsetSeconds);
        }
    }

    private void addMode(double[] samples, double onset, HalfSineContact contact, TrueMode mode, double gain) {
        Complex pole = mode.pole();
        Complex residue = mode.residue().multiply(gain);
        int n = firstSample(onset);
        for (; n < samples.length && n / rateHz - onset < contact.durationSeconds(); n++) {
            samples[n] +=
                    residue.multiply(contact.response(pole, n / rateHz - onset)).getReal();
        }
        Complex start = residue.multiply(contact.response(pole, n / rateHz - onset));
        Complex step = pole.divide(rateHz).exp();
        addDecay(samples, n, start, step);
    }

    /** The same exponential by repeated multiplication: rounding stays below 1e-11 over a second. */
    private static void addDecay(double[] samples, int from, Complex start, Complex step) {
        double re = start.getReal();
        double im = start.getImaginary();
        double enough = start.norm() * INAUDIBLE;
        for (int n = from; n < samples.length && Math.abs(re) + Math.abs(im) > enough; n++) {
            samples[n] += re;
            double next = re * step.getReal() - im * step.getImaginary();
            im = re * step.getImaginary() + im * step.getReal();
            re = next;
        }
    }

    private int firstSample(double onset) {
        return Math.max(0, (int) Math.ceil(onset * rateHz));
    }
}
