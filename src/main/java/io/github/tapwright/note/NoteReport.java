package io.github.tapwright.note;

import io.github.tapwright.signal.FullScaleRun;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/** Gathers what was found in a track, and says what the reader must know. */
final class NoteReport {

    private static final double WORTH_SAYING_CENTS = 3;
    private static final double FAR_OFF_CENTS = 50;
    private static final double LARGEST_U_OF_SPACING = 0.02;

    private final NoteTrack track;
    private final NoteSettings settings;
    private final List<String> warnings = new ArrayList<>();
    private Optional<FreeDecay> decay = Optional.empty();

    NoteReport(NoteTrack track, NoteSettings settings) {
        this.track = track;
        this.settings = settings;
        if (track.channelCount() > 1) {
            warnings.add("channel " + (track.channelUsed() + 1) + " of " + track.channelCount()
                    + " is used, the one with the most energy");
        }
        if (track.isCutShort()) {
            warnings.add("only the first " + NoteTrack.LONGEST_SECONDS + " s are analysed");
        }
        FullScaleRun.warning(track.clippedSamples(), "levels and partials are not to be trusted")
                .ifPresent(warnings::add);
    }

    void heard(FreeDecay free) {
        decay = Optional.of(free);
        free.disturbance().ifPresent(d -> warnings.add(d.text()));
    }

    RoughPitch roughly(Finding<Double> hz) {
        return new RoughPitch(hz, track.channelUsed(), warnings);
    }

    NoteResult refused(String reason) {
        return result(
                new Finding.NotFound<>(reason),
                new Finding.NotFound<>(reason),
                List.of(),
                WholeDecay.refused(reason),
                new Finding.NotFound<>(reason),
                new Finding.NotFound<>(reason));
    }

    NoteResult of(FreeDecay free, PartialSurvey survey, double secondsBefore, double seconds) {
        Map<Integer, PartialReport> reports = new TreeMap<>();
        List<StretchedSeries.Measured> measured = new ArrayList<>();
        survey.fits().forEach((number, fit) -> {
            PartialReport report = new PartialReport(fit, secondsBefore, seconds);
            Optional<Estimate> hz = report.frequencyHz()
                    .filter(f -> f.value() <= settings.highestPartialHz())
                    .filter(f -> report.levelDb().isPresent())
                    .filter(f -> f.standardUncertainty() < LARGEST_U_OF_SPACING * f.value() / number);
            if (hz.isPresent()) {
                reports.put(number, report);
                measured.add(new StretchedSeries.Measured(
                        number, hz.get().value(), hz.get().standardUncertainty()));
            }
        });
        if (measured.isEmpty()) {
            return refused("no partial could be measured: too short or too noisy");
        }
        StretchedSeries series = StretchedSeries.fit(measured);
        Pitch pitch = Pitch.of(series.pitchHz(), settings.a4Hz());
        List<Partial> partials = new ArrayList<>();
        reports.forEach((number, report) -> partials.add(partial(number, report, series, pitch)));
        note(series, pitch, partials);
        Finding<Estimate> stretch = series.tellsStretch()
                ? new Finding.Found<>(series.inharmonicity())
                : new Finding.NotFound<>("only " + series.size()
                        + " partials: four at least are needed to tell how far the series is stretched");
        WholeDecay whole = whole(free, survey, secondsBefore);
        return result(
                new Finding.Found<>(pitch),
                stretch,
                partials,
                whole,
                centroid(partials),
                new Finding.Found<>(series.scatterCents()));
    }

    private static Partial partial(int number, PartialReport report, StretchedSeries series, Pitch pitch) {
        Estimate hz = report.frequencyHz().orElseThrow();
        return new Partial(
                number,
                hz,
                report.levelDb().orElseThrow(),
                Cents.between(number * pitch.hz().value(), hz.value()),
                Cents.between(series.hz(number), hz.value()),
                series.used(number),
                report.decay());
    }

    private void note(StretchedSeries series, Pitch pitch, List<Partial> partials) {
        if (series.scatterCents() > WORTH_SAYING_CENTS) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "the partials scatter by %.1f cents about a string's series: body resonances or other strings pull them",
                    series.scatterCents()));
        }
        long outside = partials.stream().filter(p -> !p.fitsSeries()).count();
        if (outside > 0) {
            warnings.add((outside == 1
                            ? "1 partial lies off the string's series and was"
                            : outside + " partials lie off the string's series and were")
                    + " left out of pitch and inharmonicity");
        }
        if (partials.get(0).number() > 1) {
            warnings.add("the first partial is not heard; the pitch follows from the others");
        }
        settings.expected().ifPresent(note -> {
            double off = note.centsTo(pitch.hz().value(), settings.a4Hz());
            if (Math.abs(off) > FAR_OFF_CENTS) {
                warnings.add(
                        note + " was expected, but the pitch lies " + Figures.difference(off, 0) + " cents off it");
            }
        });
    }

    private WholeDecay whole(FreeDecay free, PartialSurvey survey, double secondsBefore) {
        double rate = track.rateHz();
        int onset = free.pluck().onset();
        double last = NoiseFloor.tailSamples(free.end() - onset) / rate;
        double middle = (free.end() - onset) / rate - last / 2 - secondsBefore;
        double power = survey.fits().values().stream()
                .mapToDouble(fit -> meanSquareAt(fit, middle))
                .sum();
        NoiseFloor floor = NoiseFloor.of(track.signal(), free, rate, power);
        return new EnergyDecay(
                        track.signal(), onset, free.end(), rate, Math.min(rate / 2, 1.05 * track.bandHz()), floor)
                .times();
    }

    private static double meanSquareAt(PartialFit fit, double seconds) {
        double sum = 0;
        for (int m = 0; m < fit.tones().size(); m++) {
            double amplitude = fit.amplitude(m) * Math.exp(-fit.tones().get(m).sigma() * seconds);
            sum += amplitude * amplitude / 2;
        }
        return sum;
    }

    private static Finding<Double> centroid(List<Partial> partials) {
        double sum = 0;
        double weights = 0;
        for (Partial p : partials) {
            double amplitude = Math.pow(10, p.levelDb().value() / 20);
            sum += amplitude * p.frequencyHz().value();
            weights += amplitude;
        }
        return new Finding.Found<>(sum / weights);
    }

    /** Without a pitch nobody knows whether it was a pluck that began there; so this holds with the pitch. */
    private Finding<Double> ofPluck(Finding<Pitch> pitch, Function<Pluck, Double> number) {
        return pitch.map(p -> number.apply(decay.orElseThrow().pluck()));
    }

    private NoteResult result(
            Finding<Pitch> pitch,
            Finding<Estimate> stretch,
            List<Partial> partials,
            WholeDecay whole,
            Finding<Double> centroidHz,
            Finding<Double> scatterCents) {
        return new NoteResult(
                pitch,
                stretch,
                partials,
                whole,
                ofPluck(pitch, p -> p.onset() / track.rateHz()),
                ofPluck(pitch, Pluck::attackSeconds),
                centroidHz,
                scatterCents,
                decay.flatMap(FreeDecay::disturbance),
                track.channelUsed(),
                track.durationSeconds(),
                warnings,
                settings,
                NoteAnalysis.METHOD_VERSION);
    }
}
