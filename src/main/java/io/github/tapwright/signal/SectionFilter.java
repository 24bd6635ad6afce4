package io.github.tapwright.signal;

import java.util.List;

/**
 * A recursive filter running over a signal block by block: second-order sections one after another.
 *
 * <p>Transposed direct form II, at rest before the first sample. Source: [OppenheimSchafer2010], sec. 6.3.4.
 */
public final class SectionFilter {

    private final List<SecondOrderSection> sections;
    private final double[] states;

    /**
     * A filter at rest.
     *
     * @param sections in the order the signal passes them; none leaves the signal as it is
     */
    public SectionFilter(List<SecondOrderSection> sections) {
        this.sections = List.copyOf(sections);
        this.states = new double[2 * sections.size()];
    }

    /**
     * Filters the next samples where they lie.
     *
     * @param samples the front of the array is overwritten by the filtered samples
     * @param count how many samples there are
     */
    public void process(double[] samples, int count) {
        for (int k = 0; k < sections.size(); k++) {
            run(sections.get(k), 2 * k, samples, count);
        }
    }

    private void run(SecondOrderSection section, int state, double[] samples, int count) {
        double b0 = section.b0();
        double b1 = section.b1();
        double b2 = section.b2();
        double a1 = section.a1();
        double a2 = section.a2();
        double s1 = states[state];
        double s2 = states[state + 1];
        for (int n = 0; n < count; n++) {
            double x = samples[n];
            double y = b0 * x + s1;
            s1 = b1 * x - a1 * y + s2;
            s2 = b2 * x - a2 * y;
            samples[n] = y;
        }
        states[state] = s1;
        states[state + 1] = s2;
    }
}
