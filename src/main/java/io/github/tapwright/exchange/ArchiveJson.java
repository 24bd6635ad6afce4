package io.github.tapwright.exchange;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.FormerNumber;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.KeptCalibration;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.WrittenDown;
import io.github.tapwright.sitting.listening.ListeningSession;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The JSON of what an archive keeps: instruments, sittings, or all of it. */
public final class ArchiveJson {

    private static final List<Field<GivenName>> GIVEN_NAMES = List.of(
            Field.of("frequency_hz", GivenName::frequencyHz),
            Field.maybe("name", GivenName::name),
            Field.of("given_at", g -> g.givenAt().toString()));

    private static final List<Field<FormerNumber>> FORMER_NUMBERS = List.of(
            Field.of("shop_number", f -> f.shopNumber().text()),
            Field.of("until", f -> f.until().toString()));

    private ArchiveJson() {}

    /**
     * Instruments as an array.
     *
     * @param instruments the instruments
     * @return an array of objects
     */
    public static String instruments(List<Instrument> instruments) {
        return JsonText.of(JsonText.array(InstrumentFields.ALL, instruments));
    }

    /**
     * One instrument.
     *
     * @param instrument the instrument
     * @param formerNumbers the shop numbers it had before it was renumbered, oldest first
     * @return an object
     */
    public static String instrument(Instrument instrument, List<FormerNumber> formerNumbers) {
        Map<String, @Nullable Object> document = JsonText.object(InstrumentFields.ALL, instrument);
        document.put("former_shop_numbers", JsonText.array(FORMER_NUMBERS, formerNumbers));
        return JsonText.of(document);
    }

    /**
     * One sitting with every analysis it has.
     *
     * @param sitting the sitting
     * @param taps the taps a run of notes is held against; empty if there are none
     * @param corrected what was written down about it before it was corrected, oldest first
     * @return an object
     */
    public static String sitting(Sitting sitting, Optional<Sitting> taps, List<WrittenDown> corrected) {
        Map<String, @Nullable Object> document = document(sitting, taps);
        document.put("before_corrections", JsonText.array(SittingFields.BEFORE_CORRECTIONS, corrected));
        taps.ifPresent(t -> document.put("resonances_of_sitting", t.id().toString()));
        return JsonText.of(document);
    }

    /**
     * Sittings as an array, each with every analysis it has.
     *
     * @param sittings the sittings
     * @return an array of objects
     */
    public static String sittings(List<Sitting> sittings) {
        return JsonText.of(
                sittings.stream().map(s -> document(s, Optional.empty())).toList());
    }

    /**
     * A whole archive but for the recordings themselves, which are named by their SHA-256.
     *
     * @param instruments every instrument
     * @param sittings every sitting
     * @param calibrations every calibration
     * @param listenings every blind listening
     * @return an object with the keys "instruments", "sittings", "calibrations" and "listenings"
     */
    public static String everything(
            List<Instrument> instruments,
            List<Sitting> sittings,
            List<KeptCalibration> calibrations,
            List<ListeningSession> listenings) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("instruments", JsonText.array(InstrumentFields.ALL, instruments));
        document.put(
                "sittings",
                sittings.stream().map(s -> document(s, Optional.empty())).toList());
        document.put("calibrations", JsonText.array(CalibrationFields.KEPT, calibrations));
        document.put("listenings", ListeningFields.documents(listenings));
        return JsonText.of(document);
    }

    private static Map<String, @Nullable Object> document(Sitting sitting, Optional<Sitting> taps) {
        List<ShownResonance> resonances =
                taps.map(t -> t.resonances(t.latest())).orElse(List.of());
        Map<String, @Nullable Object> document = JsonText.object(SittingFields.ALL, sitting);
        document.put("recordings", JsonText.array(SittingFields.RECORDINGS, sitting.recordings()));
        document.put("names_given", JsonText.array(GIVEN_NAMES, sitting.givenNames()));
        document.put(
                "analyses",
                sitting.analyses().stream()
                        .map(a -> analysis(sitting, a, resonances))
                        .toList());
        return document;
    }

    private static Map<String, @Nullable Object> analysis(
            Sitting sitting, Analysis analysis, List<ShownResonance> resonances) {
        List<String> files =
                sitting.recordings().stream().map(KeptRecording::fileName).toList();
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("number", analysis.number());
        document.put("made_at", analysis.madeAt().toString());
        Findings findings = analysis.findings();
        findings.taps().ifPresent(result -> addTaps(document, files, result, ResonanceRow.of(sitting, analysis)));
        findings.notes().ifPresent(board -> document.putAll(new FingerboardJson(files, board, resonances).findings()));
        findings.plucks().ifPresent(run -> addPlucks(document, files, run));
        document.put("method_version", analysis.methodVersion());
        return document;
    }

    private static void addTaps(
            Map<String, @Nullable Object> document,
            List<String> files,
            TapResult result,
            List<ResonanceRow> resonances) {
        document.put("strikes", JsonText.array(StrikeRow.FIELDS, StrikeRow.of(files, result.strikes())));
        document.put("resonances", JsonText.array(ResonanceRow.FIELDS, resonances));
        document.put("level_reference", ResonanceRow.LEVEL_REFERENCE);
        document.put("response_curve", result.curve().map(CurveColumns::of).orElse(null));
        document.put("warnings", result.warnings());
        document.put("settings", JsonText.object(StrikeRow.SETTINGS, result.settings()));
    }

    private static void addPlucks(Map<String, @Nullable Object> document, List<String> files, PluckRun run) {
        document.put("plucks", JsonText.array(PluckRow.FIELDS, PluckRow.of(files, run.meaningful())));
        document.put("calibration", run.calibration().map(CalibrationId::number).orElse(null));
        document.put(
                "calibration_withdrawn", run.withdrawn().map(OutOfUse::reason).orElse(null));
        document.put("open_strings_hz", run.tuning().openHz());
        document.put("fret_count", run.tuning().fretCount());
    }
}
