package io.github.tapwright.exchange;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.sitting.KeptCalibration;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.listening.ListeningSession;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The tables of an archive as CSV, for spreadsheets and statistics programs.
 *
 * <p>Resonances, strikes, notes and plucks are those of each sitting's latest analysis; the JSON holds all analyses.
 */
public final class ArchiveCsv {

    private ArchiveCsv() {}

    /** A row of a sitting's part, with what is needed to join it to the sitting. */
    private record Part<P>(Sitting sitting, P part) {

        static <P> Stream<Part<P>> of(Sitting sitting, List<P> parts) {
            return parts.stream().map(p -> new Part<>(sitting, p));
        }

        static <P> List<Field<Part<P>>> fields(List<Field<P>> fields) {
            List<Field<Part<P>>> keys = List.of(
                    Field.of("sitting", p -> p.sitting.id().toString()),
                    Field.of("shop_number", p -> p.sitting.instrument().text()),
                    Field.of("method_version", p -> p.sitting.latest().methodVersion()));
            List<Field<Part<P>>> flag =
                    List.of(Field.maybe("set_aside", p -> p.sitting.setAside().map(OutOfUse::reason)));
            return Stream.of(keys, Field.<Part<P>, P>within(fields, Part::part), flag)
                    .flatMap(List::stream)
                    .toList();
        }
    }

    /**
     * Every table of an archive.
     *
     * @param instruments every instrument
     * @param sittings every sitting
     * @param calibrations every calibration
     * @param listenings every blind listening
     * @return the text of each file by its name
     */
    public static Map<String, String> tables(
            List<Instrument> instruments,
            List<Sitting> sittings,
            List<KeptCalibration> calibrations,
            List<ListeningSession> listenings) {
        Map<String, String> tables = new LinkedHashMap<>();
        tables.put("instruments.csv", CsvText.of(InstrumentFields.ALL, instruments));
        tables.put("sittings.csv", CsvText.of(SittingFields.ALL, sittings));
        tables.put("recordings.csv", parts(sittings, SittingFields.RECORDINGS, Sitting::recordings));
        tables.put("strikes.csv", parts(sittings, StrikeRow.FIELDS, ArchiveCsv::strikes));
        tables.put("resonances.csv", parts(sittings, ResonanceRow.TABLE, s -> ResonanceRow.of(s, s.latest())));
        tables.put("notes.csv", parts(sittings, RunNoteRow.FIELDS, ArchiveCsv::notes));
        tables.put("partials.csv", parts(sittings, PartialRow.FIELDS, ArchiveCsv::partials));
        tables.put("plucks.csv", parts(sittings, PluckRow.TABLE, ArchiveCsv::plucks));
        tables.put("calibrations.csv", CsvText.of(CalibrationFields.KEPT, calibrations));
        tables.putAll(ListeningFields.tables(listenings));
        return tables;
    }

    private static <P> String parts(List<Sitting> sittings, List<Field<P>> fields, Function<Sitting, List<P>> of) {
        List<Part<P>> rows =
                sittings.stream().flatMap(s -> Part.of(s, of.apply(s))).toList();
        return CsvText.of(Part.fields(fields), rows);
    }

    private static List<StrikeRow> strikes(Sitting sitting) {
        return sitting.latest()
                .taps()
                .map(result -> StrikeRow.of(files(sitting), result.strikes()))
                .orElse(List.of());
    }

    private static List<RunNoteRow> notes(Sitting sitting) {
        return sitting.latest()
                .findings()
                .notes()
                .map(board -> RunNoteRow.of(files(sitting), board))
                .orElse(List.of());
    }

    private static List<PartialRow> partials(Sitting sitting) {
        return notes(sitting).stream().flatMap(PartialRow::of).toList();
    }

    private static List<PluckRow> plucks(Sitting sitting) {
        return sitting.latest()
                .findings()
                .plucks()
                .map(run -> PluckRow.of(files(sitting), run))
                .orElse(List.of());
    }

    private static List<String> files(Sitting sitting) {
        return sitting.recordings().stream().map(KeptRecording::fileName).toList();
    }
}
