package io.github.tapwright.exchange;

import io.github.tapwright.level.BandLevel;
import io.github.tapwright.level.ChannelLevels;
import io.github.tapwright.level.Level;
import io.github.tapwright.level.LevelSettings;
import io.github.tapwright.level.SoundLevels;
import io.github.tapwright.level.broadcast.ProgrammeLoudness;
import io.github.tapwright.level.loudness.HeardLoudness;
import io.github.tapwright.sitting.MeasuredLevels;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The named properties of measured levels; one that could not be measured is unknown, and a warning says why. */
final class LevelFields {

    static final List<Field<MeasuredLevels>> FILE = List.of(
            Field.of("file", MeasuredLevels::file),
            Field.of("sample_rate_hz", m -> m.facts().sampleRateHz()),
            Field.of("channels", m -> m.facts().channelCount()),
            Field.of("channel_used", m -> m.facts().channelUsed() + 1),
            Field.of("duration_s", m -> m.facts().durationSeconds()),
            Field.of("format", m -> m.facts().format()));

    static final List<Field<ChannelLevels>> CHANNEL = List.of(
            level("laeq_db", SoundLevels::laeq),
            level("lceq_db", SoundLevels::lceq),
            level("lzeq_db", SoundLevels::lzeq),
            level("lafmax_db", SoundLevels::lafMax),
            level("lasmax_db", SoundLevels::lasMax),
            level("lae_db", SoundLevels::lae),
            level("lcpeak_db", SoundLevels::lcPeak),
            heard("loudness_sone_max", HeardLoudness::maximumSone),
            heard("loudness_sone_n5", HeardLoudness::exceededFivePercentSone),
            heard("loudness_level_phon", HeardLoudness::exceededFivePercentPhon),
            heard("stationary_loudness_sone", h -> h.steady().loudnessSone()),
            heard("stationary_loudness_level_phon", h -> h.steady().loudnessLevelPhon()));

    static final List<Field<MeasuredLevels>> PROGRAMME = List.of(
            programme("lufs_integrated", ProgrammeLoudness::integratedLufs),
            programme("lufs_momentary_max", ProgrammeLoudness::momentaryMaxLufs),
            programme("lufs_short_term_max", ProgrammeLoudness::shortTermMaxLufs),
            programme("loudness_range_lu", ProgrammeLoudness::loudnessRangeLu),
            programme("true_peak_dbfs", ProgrammeLoudness::truePeakDb));

    static final List<Field<BandLevel>> BAND = List.of(
            Field.of("band_hz", b -> b.band().nominalHz()),
            Field.of("level_db", b -> b.level().levelDb()));

    static final List<Field<LevelSettings>> SETTINGS = List.of(
            Field.of("reference", s -> s.reference().unit()),
            Field.of("sound_field", s -> s.field().name().toLowerCase(Locale.ROOT)));

    private LevelFields() {}

    private static Field<ChannelLevels> level(String name, Function<SoundLevels, Level> of) {
        return Field.maybe(name, c -> c.soundLevels().map(s -> of.apply(s).levelDb()));
    }

    private static Field<ChannelLevels> heard(String name, Function<HeardLoudness, Double> of) {
        return Field.maybe(
                name, c -> c.loudness() instanceof HeardLoudness h ? Optional.of(of.apply(h)) : Optional.empty());
    }

    private static Field<MeasuredLevels> programme(String name, Function<ProgrammeLoudness, OptionalDouble> of) {
        return Field.maybe(name, m -> m.report().programme().map(of).flatMap(LevelFields::boxed));
    }

    private static Optional<Double> boxed(OptionalDouble figure) {
        return figure.isPresent() ? Optional.of(figure.getAsDouble()) : Optional.empty();
    }
}
