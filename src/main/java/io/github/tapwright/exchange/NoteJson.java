package io.github.tapwright.exchange;

import io.github.tapwright.note.Finding;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.note.Partial;
import io.github.tapwright.note.PartialDecay;
import io.github.tapwright.note.Pitch;
import io.github.tapwright.sitting.AnalyseNotes;
import io.github.tapwright.statistics.Estimate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The JSON of analyses of plucked notes. */
public final class NoteJson {

    static final List<Field<NoteSettings>> SETTINGS = List.of(
            Field.of("a4_hz", NoteSettings::a4Hz),
            Field.of("lowest_pitch_hz", NoteSettings::lowestPitchHz),
            Field.of("highest_pitch_hz", NoteSettings::highestPitchHz),
            Field.of("highest_partial_hz", NoteSettings::highestPartialHz),
            Field.maybe("expected", s -> s.expected().map(Object::toString)));

    static final List<Field<NoteResult>> FIELDS = List.of(
            Field.maybe("pitch_hz", r -> pitch(r, p -> p.hz().value())),
            Field.maybe("pitch_u_hz", r -> pitch(r, p -> p.hz().standardUncertainty())),
            Field.maybe("nearest_note", r -> pitch(r, p -> p.nearest().toString())),
            Field.maybe("cents", r -> pitch(r, p -> p.cents().value())),
            Field.maybe("cents_u", r -> pitch(r, p -> p.cents().standardUncertainty())),
            Field.maybe("inharmonicity_b", r -> r.inharmonicity().found().map(Estimate::value)),
            Field.maybe("inharmonicity_b_u", r -> r.inharmonicity().found().map(Estimate::standardUncertainty)),
            Field.maybe(
                    "early_decay_time_s",
                    r -> r.decay().early().found().map(d -> d.seconds().value())),
            Field.maybe(
                    "early_decay_time_u_s",
                    r -> r.decay().early().found().map(d -> d.seconds().standardUncertainty())),
            Field.maybe(
                    "decay_time_s",
                    r -> r.decay().decayTime().found().map(d -> d.seconds().value())),
            Field.maybe(
                    "decay_time_u_s",
                    r -> r.decay().decayTime().found().map(d -> d.seconds().standardUncertainty())),
            Field.maybe(
                    "decay_range",
                    r -> r.decay().decayTime().found().map(d -> d.range().name())),
            Field.of("decay_heard_db", r -> r.decay().heardDb()),
            Field.maybe("attack_s", r -> pitch(r, p -> r.attackSeconds()).flatMap(Finding::found)),
            Field.maybe("spectral_centroid_hz", r -> r.spectralCentroidHz().found()));

    /** Times from the start of what was analysed; they mean something only where that is a whole file. */
    private static final List<Field<NoteResult>> IN_THE_FILE = List.of(
            Field.maybe("onset_s", r -> pitch(r, p -> r.onsetSeconds()).flatMap(Finding::found)),
            Field.maybe("disturbance", r -> r.disturbance().map(d -> d.text())));

    static final List<Field<Partial>> PARTIALS = List.of(
            Field.of("number", Partial::number),
            Field.of("frequency_hz", p -> p.frequencyHz().value()),
            Field.of("frequency_u_hz", p -> p.frequencyHz().standardUncertainty()),
            Field.of("level_db", p -> p.levelDb().value()),
            Field.of("level_u_db", p -> p.levelDb().standardUncertainty()),
            Field.of("harmonic_cents", Partial::harmonicCents),
            Field.of("series_cents", Partial::seriesCents),
            Field.of("fits_series", Partial::fitsSeries),
            Field.maybe("decay_time_s", p -> p.decay().whole().map(Estimate::value)),
            Field.maybe("decay_time_u_s", p -> p.decay().whole().map(Estimate::standardUncertainty)),
            Field.maybe("early_decay_time_s", p -> p.decay().early().map(Estimate::value)),
            Field.maybe("early_decay_time_u_s", p -> p.decay().early().map(Estimate::standardUncertainty)),
            Field.maybe("late_decay_time_s", p -> late(p.decay()).map(Estimate::value)),
            Field.maybe("late_decay_time_u_s", p -> late(p.decay()).map(Estimate::standardUncertainty)),
            Field.of("two_stage", p -> p.decay() instanceof PartialDecay.TwoStage two && two.stagesDiffer()),
            Field.maybe(
                    "beat_hz",
                    p -> p.decay() instanceof PartialDecay.TwoStage two && two.beats()
                            ? Optional.of(Math.abs(two.beatHz().value()))
                            : Optional.empty()),
            Field.maybe(
                    "refused_because",
                    p -> p.decay() instanceof PartialDecay.Refused refused
                            ? Optional.of(refused.reason())
                            : Optional.empty()),
            Field.maybe(
                    "stages_not_told_because",
                    p -> p.decay() instanceof PartialDecay.Blended blended
                            ? Optional.of(blended.reason())
                            : Optional.empty()));

    private NoteJson() {}

    /**
     * Notes analysed one by one.
     *
     * @param names the files as given
     * @param found what was found in each
     * @return an object if there is one file, an array if there are several
     */
    public static String each(List<String> names, List<AnalyseNotes.Found> found) {
        List<Map<String, @Nullable Object>> documents = Stream.iterate(0, i -> i < found.size(), i -> i + 1)
                .map(i -> document(names.get(i), found.get(i)))
                .toList();
        return JsonText.of(documents.size() == 1 ? documents.get(0) : documents);
    }

    /**
     * Every partial of some notes.
     *
     * @param names the files as given
     * @param found what was found in each
     * @return the text of a CSV file, one line for each partial
     */
    public static String csv(List<String> names, List<AnalyseNotes.Found> found) {
        return CsvText.of(
                PartialRow.FIELDS,
                Stream.iterate(0, i -> i < found.size(), i -> i + 1)
                        .flatMap(i -> PartialRow.of(
                                names.get(i),
                                i + 1,
                                Optional.empty(),
                                found.get(i).result()))
                        .toList());
    }

    private static Map<String, @Nullable Object> document(String name, AnalyseNotes.Found found) {
        Map<String, @Nullable Object> document = JsonText.object(TapFile.FIELDS, new TapFile(name, found.facts()));
        document.putAll(note(found.result()));
        document.putAll(JsonText.object(IN_THE_FILE, found.result()));
        document.put(
                "warnings",
                Stream.concat(
                                found.facts().notices().stream(),
                                Stream.concat(refusals(found.result()), found.result().warnings().stream()))
                        .toList());
        document.put("method_version", found.result().methodVersion());
        document.put("settings", JsonText.object(SETTINGS, found.result().settings()));
        return document;
    }

    /** A note's own keys. */
    static Map<String, @Nullable Object> note(NoteResult result) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>(JsonText.object(FIELDS, result));
        document.put("partials", JsonText.array(PARTIALS, result.partials()));
        return document;
    }

    /** Why a figure is null. */
    static Stream<String> refusals(NoteResult result) {
        return Stream.of(
                        refusal("pitch", result.pitch()),
                        refusal("inharmonicity", result.inharmonicity()),
                        refusal("early decay time", result.decay().early()),
                        refusal("T20", result.decay().t20()),
                        refusal("T30", result.decay().t30()))
                .flatMap(Optional::stream)
                .distinct();
    }

    private static Optional<String> refusal(String what, Finding<?> finding) {
        return finding.refusal().map(why -> what + ": " + why);
    }

    private static <T> Optional<T> pitch(NoteResult result, Function<Pitch, T> of) {
        return result.pitch().found().map(of);
    }

    /** One stage that explains the data stands for both. */
    private static Optional<Estimate> late(PartialDecay decay) {
        return decay.late().or(decay::early);
    }
}
