package io.github.tapwright.demo;

import io.github.tapwright.synthesis.Chance;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * One mode of the top above the coupled ones, before finish.
 *
 * @param name what makers call it, or "plate mode"
 * @param frequencyHz at 45 % relative humidity
 * @param q before finish
 * @param relativeStrength of its plateau pressure against the top piston's; parts in antiphase nearly cancel
 */
record PlateMode(String name, double frequencyHz, double q, double relativeStrength) {

    private static final double[] UPPER_HZ = {455, 512, 580, 655, 735, 815, 885, 940};

    /** The same for every sitting of an instrument: dipoles first, then eight modes up to 1 kHz. */
    static List<PlateMode> of(DemoInstrument guitar) {
        Random random = Chance.seeded(1000 + Long.parseLong(guitar.shopNumber()));
        double stiffer = guitar.top().frequencyHz() / 170;
        List<PlateMode> modes = new ArrayList<>();
        modes.add(new PlateMode("cross dipole", stiffer * between(random, 282, 300), between(random, 34, 44), 0.16));
        modes.add(new PlateMode("long dipole", stiffer * between(random, 372, 395), between(random, 34, 46), 0.20));
        for (double hertz : UPPER_HZ) {
            double frequency = stiffer * hertz * between(random, 0.985, 1.015);
            modes.add(new PlateMode("plate mode", frequency, between(random, 32, 60), between(random, 0.05, 0.2)));
        }
        return List.copyOf(modes);
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
