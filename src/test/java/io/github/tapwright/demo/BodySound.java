package io.github.tapwright.demo;

import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.body.Air;
import io.github.tapwright.mode.body.CoupledBody;
import io.github.tapwright.mode.body.Plate;
import io.github.tapwright.mode.body.Pole;
import io.github.tapwright.mode.body.Soundhole;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.TrueMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hipparchus.complex.Complex;

/**
 * What a body answers to a blow at the bridge, as modes: the coupled pistons and the plate modes above them.
 *
 * @param modes lowest first
 * @param directGain pressure that follows the force at once, Pa/N
 */
record BodySound(List<NamedMode> modes, double directGain) {

    static final double DISTANCE_METRES = 0.5;

    private static final double SITTING_FREQUENCY_SCATTER = 0.0015;
    private static final double SITTING_Q_SCATTER = 0.02;

    /** A mode and what makers call it, or what it is for those without a name. */
    record NamedMode(String name, TrueMode mode) {}

    /** The body on the day, with the chance of the set-up. */
    static BodySound of(DemoSitting sitting) {
        return new BodySound.Maker(sitting, Chance.seeded(7000 + sitting.number())).make();
    }

    /** The body on the day as it would be without the chance of the set-up. */
    static CoupledBody nominalBody(DemoSitting sitting) {
        return body(sitting, topDrift(sitting), new double[] {1, 1, 1, 1});
    }

    List<TrueMode> trueModes() {
        return modes.stream().map(NamedMode::mode).toList();
    }

    /** Air at a temperature; source: [FletcherRossing1998] for the form, from memory, to be verified. */
    static Air air(double temperatureC) {
        double relative = 1 + temperatureC / 273.15;
        return new Air(1.2929 / relative, 331.3 * Math.sqrt(relative));
    }

    private static CoupledBody body(DemoSitting sitting, double topDrift, double[] chance) {
        DemoInstrument guitar = sitting.instrument();
        DemoStage stage = sitting.stage();
        Soundhole hole = guitar.hole();
        return new CoupledBody(
                air(sitting.room().temperatureC()),
                guitar.volumeCubicMetres(),
                new Soundhole(hole.radiusMetres(), hole.thicknessMetres(), lossier(hole.q(), stage.holeLoss)),
                plate(guitar.top(), sitting, topDrift * chance[0], chance[1]),
                Optional.of(plate(guitar.back(), sitting, chance[2], chance[3])),
                sitting.hole());
    }

    private static Plate plate(Plate bare, DemoSitting sitting, double frequencyFactor, double qFactor) {
        DemoStage stage = sitting.stage();
        double humid = stage.frequencyFactor(sitting.room().relativeHumidityPercent());
        return new Plate(
                bare.massKilograms() * stage.massFactor,
                bare.areaSquareMetres(),
                bare.frequencyHz() * humid * frequencyFactor,
                lossier(bare.q(), stage.plateLoss) * qFactor);
    }

    private static double lossier(double q, double loss) {
        return 1 / (1 / q + loss);
    }

    /** Factor on the top's own frequency that moves the main top by the sitting's drift, by bisection. */
    private static double topDrift(DemoSitting sitting) {
        double[] noChance = {1, 1, 1, 1};
        double wanted = mainTop(body(sitting, 1, noChance)).frequencyHz() * sitting.drift();
        double low = 0.9;
        double high = 1.1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (mainTop(body(sitting, middle, noChance)).frequencyHz() < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** The second resonance with the hole open, the first with it covered: the back lies above the top here. */
    static Pole mainTop(CoupledBody body) {
        return body.poles().get(body.holeState() == HoleState.OPEN ? 1 : 0);
    }

    private record Maker(DemoSitting sitting, Random random) {

        BodySound make() {
            double[] chance = {frequencyChance(), qChance(), frequencyChance(), qChance()};
            CoupledBody body = body(sitting, topDrift(sitting), chance);
            List<NamedMode> modes = new ArrayList<>(coupled(body));
            double direct = body.plateauPressurePerNewton(DISTANCE_METRES);
            double plateau = direct;
            for (PlateMode upper : PlateMode.of(sitting.instrument())) {
                double share = upper.relativeStrength() * plateau;
                modes.add(new NamedMode(upper.name(), upper(upper, share)));
                direct += share;
            }
            return new BodySound(List.copyOf(modes), direct);
        }

        private static List<NamedMode> coupled(CoupledBody body) {
            List<String> names = body.holeState() == HoleState.OPEN
                    ? List.of("main air", "main top", "main back")
                    : List.of("main top", "main back");
            List<NamedMode> modes = new ArrayList<>();
            for (int i = 0; i < names.size(); i++) {
                Pole pole = body.poles().get(i);
                Complex residue = body.pressureResidue(pole, DISTANCE_METRES).multiply(2);
                modes.add(new NamedMode(
                        names.get(i),
                        new TrueMode(pole.frequencyHz(), pole.q(), residue.norm(), residue.getArgument())));
            }
            return modes;
        }

        /** Pressure per newton share·s²/(s² + 2σs + ω²), whose residue at the pole is share·s²/(2iω_d). */
        private TrueMode upper(PlateMode mode, double share) {
            DemoStage stage = sitting.stage();
            double frequency = mode.frequencyHz()
                    * stage.frequencyFactor(sitting.room().relativeHumidityPercent())
                    * frequencyChance();
            TrueMode plain = TrueMode.resonator(frequency, lossier(mode.q(), stage.plateLoss) * qChance(), 1);
            Complex s = plain.pole();
            Complex residue = s.multiply(s).multiply(share).divide(new Complex(0, s.getImaginary()));
            return new TrueMode(frequency, plain.q(), residue.norm(), residue.getArgument());
        }

        private double frequencyChance() {
            return 1 + SITTING_FREQUENCY_SCATTER * random.nextGaussian();
        }

        private double qChance() {
            return 1 + SITTING_Q_SCATTER * random.nextGaussian();
        }
    }
}
