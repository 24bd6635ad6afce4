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
        int k = 0;
        for (; k + 1 < sections.size(); k += 2) {
            runTwo(sections.get(k), sections.get(k + 1), 2 * k, samples, count);
        }
        if (k < sections.size()) {
            run(sections.get(k), 2 * k, samples, count);
        }
    }

    /** Two sections in one pass: each waits for its own last output, so the processor can work on both at once. */
    private void runTwo(SecondOrderSection a, SecondOrderSection b, int state, double[] samples, int count) {
        double ab0 = a.b0();
        double ab1 = a.b1();
        double ab2 = a.b2();
        double aa1 = a.a1();
        double aa2 = a.a2();
        double bb0 = b.b0();
        double bb1 = b.b1();
        double bb2 = b.b2();
        double ba1 = b.a1();
        double ba2 = b.a2();
        double s1 = states[state];
        double s2 = states[state + 1];
        double t1 = states[state + 2];
        double t2 = states[state + 3];
        for (int n = 0; n < count; n++) {
            double x = samples[n];
            double y = ab0 * x + s1;
            s1 = ab1 * x - aa1 * y + s2;
            s2 = ab2 * x - aa2 * y;
            double z = bb0 * y + t1;
            t1 = bb1 * y - ba1 * z + t2;
            t2 = bb2 * y - ba2 * z;
            samples[n] = z;
        }
        states[state] = s1;
        states[state + 1] = s2;
        states[state + 2] = t1;
        states[state + 3] = t2;
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
