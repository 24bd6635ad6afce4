package io.github.tapwright.tap;

import java.util.List;

/**
 * A moment at which something struck the body.
 *
 * @param onsetSeconds when the contact began
 * @param decayStartSeconds from when on the body rings freely
 * @param laterContacts further contacts within the same tap
 */
record Contact(double onsetSeconds, double decayStartSeconds, List<Later> laterContacts) {

    Contact {
        laterContacts = List.copyOf(laterContacts);
    }

    /**
     * A further contact.
     *
     * @param delaySeconds how long after the first
     * @param strengthDb its novelty re that of the first, dB
     */
    record Later(double delaySeconds, double strengthDb) {}
}
