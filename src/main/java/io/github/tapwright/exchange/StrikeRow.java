package io.github.tapwright.exchange;

import io.github.tapwright.tap.Rejection;
import io.github.tapwright.tap.SetAside;
import io.github.tapwright.tap.Strike;
import io.github.tapwright.tap.TapSettings;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A strike with the name of the file it was found in.
 *
 * @param file name of the recording
 * @param number from 1, over all files of the set
 * @param strike the strike
 */
record StrikeRow(String file, int number, Strike strike) {

    static final List<Field<StrikeRow>> FIELDS = List.of(
            Field.of("file", StrikeRow::file),
            Field.of("number", StrikeRow::number),
            Field.of("onset_s", r -> r.strike.onsetSeconds()),
            Field.of("peak_dbfs", r -> r.strike.peakDbfs()),
            Field.of("snr_db", r -> r.strike.snrDb()),
            Field.of("used", r -> r.strike.used()),
            Field.of(
                    "rejected_because",
                    r -> r.strike.rejections().stream()
                            .map(x -> x.reason().key())
                            .toList()),
            Field.of(
                    "rejection_figures",
                    r -> r.strike.rejections().stream().map(Rejection::figure).toList()));

    private static final List<Field<SetAside>> SET_ASIDE =
            List.of(Field.of("recording", s -> s.source() + 1), Field.of("onset_s", SetAside::onsetSeconds));

    static final List<Field<TapSettings>> SETTINGS = List.of(
            Field.of("low_hz", TapSettings::lowHz),
            Field.of("high_hz", TapSettings::highHz),
            Field.of("longest_decay_s", TapSettings::longestDecaySeconds),
            Field.of("minimum_snr_db", TapSettings::minimumSnrDb),
            Field.of("set_aside", s -> JsonText.array(SET_ASIDE, s.setAside())));

    static List<StrikeRow> of(List<String> files, List<Strike> strikes) {
        return IntStream.range(0, strikes.size())
                .mapToObj(i -> new StrikeRow(files.get(strikes.get(i).source()), i + 1, strikes.get(i)))
                .toList();
    }
}
