package io.github.tapwright.tap;

import java.util.List;

/**
 * A track in which contacts and mains hum were found: the part of finding strikes that looks at one track alone. A
 * recording that still runs is cut into tracks, each heard once and judged together with the others again and again.
 */
public final class HeardTrack {

    private static final double END_SECONDS = 0.02;

    private final TapTrack track;
    private final List<Contact> contacts;
    private final Hum hum;
    private final QuietedTrack quieted;

    private HeardTrack(TapTrack track, List<Contact> contacts, Hum hum, QuietedTrack quieted) {
        this.track = track;
        this.contacts = contacts;
        this.hum = hum;
        this.quieted = quieted;
    }

    /**
     * Listens to a track.
     *
     * @param track decimated for the same settings
     * @param settings what to look for; which strikes are set aside does not matter here
     * @return the track and what was heard in it
     */
    public static HeardTrack of(TapTrack track, TapSettings settings) {
        // Where a file ends in the middle of a sound, the cut itself looks like a contact.
        List<Contact> contacts = ContactFinder.find(track).stream()
                .filter(c -> c.onsetSeconds() < track.durationSeconds() - END_SECONDS)
                .toList();
        Hum hum = MainsHum.find(track, contacts, settings.highHz());
        QuietedTrack quieted =
                new QuietedTrack(track, QuietedTrack.withoutTones(track, hum.tonesHz(), contacts), settings);
        return new HeardTrack(track, contacts, hum, quieted);
    }

    /**
     * When something struck.
     *
     * @return onsets, seconds from the start of the track
     */
    public List<Double> onsetsSeconds() {
        return contacts.stream().map(Contact::onsetSeconds).toList();
    }

    TapTrack track() {
        return track;
    }

    List<Contact> contacts() {
        return contacts;
    }

    Hum hum() {
        return hum;
    }

    QuietedTrack quieted() {
        return quieted;
    }
}
