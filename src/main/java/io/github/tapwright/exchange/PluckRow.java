package io.github.tapwright.exchange;

import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A pluck with the name of the file it was found in.
 *
 * @param file name of the recording
 * @param pluck the pluck
 * @param calibration what its level rests on; empty if on none, or that stands beside it
 * @param withdrawn why that was withdrawn; empty if it was not
 */
record PluckRow(String file, Pluck pluck, Optional<CalibrationId> calibration, Optional<OutOfUse> withdrawn) {

    static final List<Field<PluckRow>> FIELDS = List.of(
            Field.of("file", PluckRow::file),
            Field.of("found_at_s", r -> r.pluck.attackSeconds()),
            Field.maybe("string", r -> r.pluck.string()),
            Field.maybe("lafmax_db", r -> r.pluck.lafMaxDb()),
            Field.maybe("lufs_momentary_max", r -> r.pluck.momentaryMaxLufs()),
            Field.maybe("loudness_sone_max", r -> r.pluck.maximumSone()),
            Field.of("warnings", r -> r.pluck.warnings()));

    /** As a table, where nothing else says what levels rest on. */
    static final List<Field<PluckRow>> TABLE = Stream.concat(
                    FIELDS.stream(),
                    Stream.of(
                            Field.<PluckRow>maybe("calibration", r -> r.calibration.map(CalibrationId::number)),
                            Field.<PluckRow>maybe("calibration_withdrawn", r -> r.withdrawn.map(OutOfUse::reason))))
            .toList();

    static List<PluckRow> of(List<String> files, List<Pluck> plucks) {
        return plucks.stream()
                .map(p -> new PluckRow(files.get(p.file()), p, Optional.empty(), Optional.empty()))
                .toList();
    }

    static List<PluckRow> of(List<String> files, PluckRun run) {
        return run.meaningful().stream()
                .map(p -> new PluckRow(files.get(p.file()), p, run.calibration(), run.withdrawn()))
                .toList();
    }
}
