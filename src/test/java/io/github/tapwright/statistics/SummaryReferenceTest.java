package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.validation.Digits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Certified means, scatters and autocorrelations, [NIST-StRD]. Numbers such as 1000000.2 have no exact binary form: what is lost
 * there no sum can bring back, hence fewer digits of the scatter asked of NumAcc3 and NumAcc4.
 */
class SummaryReferenceTest {

    @ParameterizedTest
    @CsvSource({
        "numacc1, 14, 14, 14",
        "numacc2, 14, 13, 13",
        "numacc3, 14, 9, 9",
        "numacc4, 14, 8, 8",
        "michelso, 14, 12, 12",
        "mavro, 14, 12, 12",
        "lew, 14, 13, 13",
        "lottery, 14, 13, 13"
    })
    void agreesWithTheCertifiedDigits(String dataset, double meanDigits, double scatterDigits, double lagDigits) {
        double[] values = Nist.data(dataset).column("y");

        Summary summary = Summary.of(values);

        assertThat(Digits.shared(summary.mean(), Nist.certified(dataset, "mean")))
                .isGreaterThanOrEqualTo(meanDigits);
        assertThat(Digits.shared(summary.standardDeviation(), Nist.certified(dataset, "sd")))
                .isGreaterThanOrEqualTo(scatterDigits);
        assertThat(Digits.shared(Summary.lag1Autocorrelation(values).orElseThrow(), Nist.certified(dataset, "lag1")))
                .isGreaterThanOrEqualTo(lagDigits);
    }
}
