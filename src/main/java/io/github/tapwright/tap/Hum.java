package io.github.tapwright.tap;

import java.util.List;

/**
 * The mains heard in a recording: steady tones at whole multiples of one frequency.
 *
 * @param fundamentalHz 50 or 60 Hz as found, within 0.6 %; meaningless where there are no multiples
 * @param multiples which multiples stand out, lowest first; empty if the room does not hum
 */
record Hum(double fundamentalHz, List<Integer> multiples) {

    static final Hum NONE = new Hum(50, List.of());

    Hum {
        multiples = multiples.stream().sorted().distinct().toList();
    }

    boolean isHeard() {
        return !multiples.isEmpty();
    }

    /** The tones, lowest first. */
    List<Double> tonesHz() {
        return multiples.stream().map(k -> k * fundamentalHz).toList();
    }

    /**
     * One hum for several recordings of a set: the mean frequency, and every multiple that any of them shows.
     * Two grids within one set are impossible, so the one heard in more recordings counts.
     *
     * @param hums one for each recording
     */
    static Hum shared(List<Hum> hums) {
        List<Hum> fifty =
                hums.stream().filter(h -> h.isHeard() && h.fundamentalHz < 55).toList();
        List<Hum> sixty =
                hums.stream().filter(h -> h.isHeard() && h.fundamentalHz > 55).toList();
        List<Hum> heard = fifty.size() >= sixty.size() ? fifty : sixty;
        if (heard.isEmpty()) {
            return NONE;
        }
        return new Hum(
                heard.stream().mapToDouble(Hum::fundamentalHz).average().orElseThrow(),
                heard.stream().flatMap(h -> h.multiples.stream()).toList());
    }
}
