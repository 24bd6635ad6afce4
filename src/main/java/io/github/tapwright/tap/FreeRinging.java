package io.github.tapwright.tap;

import io.github.tapwright.signal.RingingPrediction;
import io.github.tapwright.statistics.Median;
import java.util.List;

/**
 * The ringing between contacts, foretold as exactly as the noise allows: the second witness of every contact.
 *
 * <p>The novelty's own predictor foretells a strong mode at 50 to 80 Hz, such as a neck's bending, only roughly, so that
 * the crests of its ringing leap out like contacts. This one is learnt where nothing but ringing is heard.
 */
final class FreeRinging {

    private static final int ORDER = 32;
    private static final double LEARN_SECONDS = 0.3;
    private static final double CONTACT_SECONDS = 0.004;

    private final Novelty novelty;
    private final double rateHz;

    private FreeRinging(Novelty novelty, double rateHz) {
        this.novelty = novelty;
        this.rateHz = rateHz;
    }

    /** Learns from what rings after each contact until the next. */
    static FreeRinging of(double[] signal, double rateHz, List<Contact> contacts) {
        RingingPrediction prediction = new RingingPrediction(ORDER);
        for (int i = 0; i < contacts.size(); i++) {
            double end = contacts.get(i).decayStartSeconds() + LEARN_SECONDS;
            if (i + 1 < contacts.size()) {
                end = Math.min(end, contacts.get(i + 1).onsetSeconds() - CONTACT_SECONDS);
            }
            learn(prediction, signal, rateHz, contacts.get(i), end);
        }
        return new FreeRinging(Novelty.leftBy(prediction, signal, rateHz), rateHz);
    }

    /** Further contacts of the same tap are left out: they would teach what no ringing does. */
    private static void learn(
            RingingPrediction prediction, double[] signal, double rateHz, Contact contact, double endSeconds) {
        double start = contact.decayStartSeconds();
        for (Contact.Later later : contact.laterContacts()) {
            double at = contact.onsetSeconds() + later.delaySeconds();
            prediction.accumulate(signal, sample(start, rateHz), sample(at - CONTACT_SECONDS, rateHz));
            start = Math.max(start, at + CONTACT_SECONDS);
        }
        prediction.accumulate(signal, sample(start, rateHz), Math.min(signal.length, sample(endSeconds, rateHz)));
    }

    private static int sample(double seconds, double rateHz) {
        return (int) Math.max(0, Math.round(seconds * rateHz));
    }

    /** How far what is heard at a sample stands above what was heard before, in power, once all ringing is foretold. */
    double leapAt(int n) {
        int back = sample(0.005, rateHz);
        int far = sample(0.014, rateHz);
        if (n < far) {
            return Double.POSITIVE_INFINITY; // the file starts on the hit
        }
        double here = 0;
        for (int m = n - sample(0.003, rateHz); m <= Math.min(novelty.length() - 1, n + ORDER / 2); m++) {
            here = Math.max(here, novelty.at(m));
        }
        return here / Math.max(1e-300, Median.of(novelty.between(n - far, n - back)));
    }
}
