package io.github.tapwright.validation;

import io.github.tapwright.level.band.Band;
import io.github.tapwright.level.band.BandMeter;
import io.github.tapwright.level.band.Bandwidth;
import io.github.tapwright.recording.SampleRate;
import java.util.ArrayList;
import java.util.List;

/** Octave and third-octave bands. */
final class BandSection implements Section {

    private static final double RATE_HZ = 48_000;
    private static final double SECONDS = 4;
    private static final String SOURCE = "[IEC61260-1], table 1, class 1";
    /** Exponents x of the frequencies G^x beside the band's middle, and the least attenuation there, octaves. */
    private static final double[][] FAR = {{1, 16.6}, {2, 40.5}, {3, 60}};

    @Override
    public String title() {
        return "Octaves and thirds of octaves";
    }

    @Override
    public String about() {
        return "Tones of 4 s through the meter of bands: how far each is attenuated in the band it belongs to, and beside it.";
    }

    @Override
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        for (Bandwidth width : Bandwidth.values()) {
            for (int octave : new int[] {-3, 0, 3}) {
                Band band = new Band(width, octave * width.bandsPerOctave());
                String name = (width == Bandwidth.OCTAVE ? "octave" : "third octave") + " of "
                        + Numbers.expected(band.nominalHz()) + " Hz";
                checks.add(new Check(
                        name + ", attenuation in its middle",
                        0,
                        "dB",
                        SOURCE,
                        Tolerance.within(0.4, "the standard's limits"),
                        () -> attenuationDb(band, band.midHz())));
                for (double[] far : FAR) {
                    double ratio = ratio(far[0], width.bandsPerOctave());
                    add(checks, name, far[1], band, band.midHz() * ratio);
                    add(checks, name, far[1], band, band.midHz() / ratio);
                }
            }
        }
        return checks;
    }

    private static void add(List<Check> checks, String name, double least, Band band, double hertz) {
        if (hertz < RATE_HZ / 2) {
            checks.add(new Check(
                    name + ", attenuation at " + Math.round(hertz * 10) / 10.0 + " Hz",
                    least,
                    "dB",
                    SOURCE,
                    Tolerance.atLeast("the standard's least attenuation"),
                    () -> attenuationDb(band, hertz)));
        }
    }

    /** The breakpoint of a band of any width, formula 9 of the standard. */
    private static double ratio(double exponent, int bandsPerOctave) {
        double g = Math.pow(10, 0.3);
        return 1 + (Math.pow(g, 0.5 / bandsPerOctave) - 1) / (Math.pow(g, 0.5) - 1) * (Math.pow(g, exponent) - 1);
    }

    /** The tone swells and fades over a second, so that its edges put nothing beside it. */
    private static double attenuationDb(Band band, double hertz) {
        double[] tone = MadeSound.of(RATE_HZ, SECONDS, t -> swell(t) * Math.sin(2 * Math.PI * hertz * t));
        BandMeter meter = new BandMeter(band.bandwidth(), new SampleRate(RATE_HZ));
        meter.take(tone, tone.length);
        double through = meter.powers().stream()
                .filter(p -> p.band().equals(band))
                .findFirst()
                .orElseThrow()
                .meanSquare();
        double whole = 0;
        for (double x : tone) {
            whole += x * x / tone.length;
        }
        return -10 * Math.log10(through / whole);
    }

    private static double swell(double t) {
        double edge = Math.min(1, Math.min(t, SECONDS - t));
        return Math.pow(Math.sin(Math.PI / 2 * edge), 2);
    }
}
