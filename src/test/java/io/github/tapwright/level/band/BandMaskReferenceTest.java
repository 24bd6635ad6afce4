package io.github.tapwright.level.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.signal.SecondOrderSection;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every band against the class 1 limits of [IEC61260-1], table 1: relative attenuation at frequencies Ω·f_m,
 * the breakpoints Ω by formula 9, straight lines between them over lg Ω.
 */
class BandMaskReferenceTest {

    private static final double ANY = 1e9;
    private static final double G = Math.pow(10, 0.3);

    /** Exponent x of the breakpoint Ω = G^x for octaves, least and most attenuation there, dB. */
    private static final double[][] LIMITS = {
        {0, -0.4, 0.4}, {0.125, -0.4, 0.5}, {0.25, -0.4, 0.7}, {0.375, -0.4, 1.4}, {0.5, -0.4, 5.3},
        {0.5, 1.2, ANY}, {1, 16.6, ANY}, {2, 40.5, ANY}, {3, 60, ANY}, {4, 70, ANY}
    };

    static List<Arguments> rates() {
        return DoubleStream.of(44_100, 48_000, 96_000)
                .boxed()
                .flatMap(rate -> List.of(Bandwidth.values()).stream().map(width -> Arguments.of(width, rate)))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("rates")
    void everyBandStaysWithinItsMask(Bandwidth width, double rateHz) {
        double margin = ANY;
        for (Band band : width.bandsWithin(rateHz)) {
            List<SecondOrderSection> sections = BandDesign.sections(band, rateHz);
            for (int k = -4000; k <= 4000; k++) {
                double omega = Math.pow(G, k / 800.0); // Ω from G⁻⁵ to G⁵
                double frequencyHz = band.midHz() * omega;
                if (frequencyHz >= rateHz / 2) {
                    continue;
                }
                double attenuation = attenuationDb(sections, frequencyHz, rateHz);
                double[] limits = limits(omega, width.bandsPerOctave());
                assertThat(attenuation)
                        .as("%s %.1f Hz at %.3f Hz", width, band.nominalHz(), frequencyHz)
                        .isBetween(limits[0], limits[1]);
                margin = Math.min(margin, Math.min(attenuation - limits[0], limits[1] - attenuation));
            }
        }
        System.out.printf("%s bands at %.0f Hz: least distance to the mask %.2f dB%n", width, rateHz, margin);
    }

    /** Effective bandwidth within ±0.4 dB of the exact one, class 1. */
    @ParameterizedTest
    @MethodSource("rates")
    void effectiveBandwidth(Bandwidth width, double rateHz) {
        for (Band band : width.bandsWithin(rateHz)) {
            List<SecondOrderSection> sections = BandDesign.sections(band, rateHz);
            double step = 1e-4;
            double sum = 0;
            for (double logOmega = -3; logOmega <= 3; logOmega += step) {
                double frequencyHz = band.midHz() * Math.exp(logOmega);
                if (frequencyHz < rateHz / 2) {
                    sum += step * Math.pow(10, -attenuationDb(sections, frequencyHz, rateHz) / 10);
                }
            }
            double exact = Math.log(G) / width.bandsPerOctave(); // 0.690776 or 0.230259
            assertThat(10 * Math.log10(sum / exact)).isCloseTo(0, within(0.4));
        }
    }

    /** The breakpoints of third-octave bands as annex F prints them; tolerance half a unit of the last digit. */
    @ParameterizedTest
    @CsvSource({
        "0.125, 1.02667",
        "0.25, 1.05575",
        "0.375, 1.08746",
        "0.5, 1.12202",
        "1, 1.29437",
        "2, 1.88173",
        "3, 3.05365",
        "4, 5.39195"
    })
    void breakpoints(double exponent, double omega) {
        assertThat(breakpoint(exponent, 3)).isCloseTo(omega, within(5.1e-6));
    }

    private static double attenuationDb(List<SecondOrderSection> sections, double frequencyHz, double rateHz) {
        double power = 1;
        for (SecondOrderSection section : sections) {
            power *= section.powerGain(frequencyHz, rateHz);
        }
        return -10 * Math.log10(power);
    }

    private static double breakpoint(double exponent, int bandsPerOctave) {
        return 1 + (Math.pow(G, 0.5 / bandsPerOctave) - 1) / (Math.pow(G, 0.5) - 1) * (Math.pow(G, exponent) - 1);
    }

    private static double[] limits(double omega, int bandsPerOctave) {
        double distance = Math.abs(Math.log(omega));
        for (int i = 0; i + 1 < LIMITS.length; i++) {
            double from = Math.log(breakpoint(LIMITS[i][0], bandsPerOctave));
            double to = Math.log(breakpoint(LIMITS[i + 1][0], bandsPerOctave));
            if (distance < to) {
                double share = (distance - from) / (to - from);
                double least = LIMITS[i][1] + share * (LIMITS[i + 1][1] - LIMITS[i][1]);
                return new double[] {
                    least, LIMITS[i + 1][2] == ANY ? ANY : LIMITS[i][2] + share * (LIMITS[i + 1][2] - LIMITS[i][2])
                };
            }
        }
        return new double[] {LIMITS[LIMITS.length - 1][1], ANY};
    }
}
