package io.github.tapwright.exchange;

import io.github.tapwright.sitting.Pluck;
import java.util.List;

/**
 * A pluck with the name of the file it was found in.
 *
 * @param file name of the recording
 * @param pluck the pluck
 */
record PluckRow(String file, Pluck pluck) {

    static final List<Field<PluckRow>> FIELDS = List.of(
            Field.of("file", PluckRow::file),
            Field.of("found_at_s", r -> r.pluck.attackSeconds()),
            Field.maybe("string", r -> r.pluck.string()),
            Field.maybe("lafmax_db", r -> r.pluck.lafMaxDb()),
            Field.maybe("lufs_momentary_max", r -> r.pluck.momentaryMaxLufs()),
            Field.maybe("loudness_sone_max", r -> r.pluck.maximumSone()),
            Field.of("warnings", r -> r.pluck.warnings()));

    static List<PluckRow> of(List<String> files, List<Pluck> plucks) {
        return plucks.stream().map(p -> new PluckRow(files.get(p.file()), p)).toList();
    }
}
