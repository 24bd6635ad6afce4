package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.instrument.Body;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.Layer;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.Microphone;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.NewAnalysis;
import io.github.tapwright.sitting.NewSitting;
import io.github.tapwright.sitting.Placing;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingStore;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.sitting.SoundFacts;
import io.github.tapwright.sitting.StagedOriginal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoundTripTest {

    private static final Instant NOW = Instant.parse("2026-03-14T09:26:53.123456789Z");
    private static final SoundFacts FACTS =
            new SoundFacts("WAV, 16 bit", 44_100, 2, 1, 12.3456789, List.of("the header is too short", "no matter"));

    @TempDir
    Path folder;

    @Test
    void everyFieldOfAnInstrumentComesBack() {
        Instrument full = new Instrument(
                new ShopNumber("T-99"),
                InstrumentKind.STEEL_STRING,
                new Body(Optional.of(645.5), Optional.of(12), Optional.of(101.6), Optional.of("deep\nbody")),
                new Construction(
                        Optional.of(ConstructionKind.HONEYCOMB_SANDWICH),
                        new Layer(Optional.of("spruce"), Optional.of(0.6)),
                        new Layer(Optional.of("aramid honeycomb"), Optional.of(1.9)),
                        new Layer(Optional.of("cedar"), Optional.of(0.55)),
                        Optional.of("lattice")),
                Optional.of("The Quiet One"),
                Optional.of("a note"));
        try (Workshop workshop = Workshop.in(folder)) {
            workshop.archive.instruments().add(full);
        }
        try (Workshop workshop = Workshop.in(folder)) {
            assertThat(workshop.archive.instruments().find(full.shopNumber())).contains(full);
            assertThat(workshop.archive.instruments().all())
                    .containsExactly(Instrument.of(Workshop.NUMBER, InstrumentKind.CLASSICAL), full);
        }
    }

    @Test
    void aShopNumberIsTakenOnceAndAnUnknownOneCannotBeReplaced() {
        Instrument other = Instrument.of(Workshop.NUMBER, InstrumentKind.OTHER);
        Instrument stranger = Instrument.of(new ShopNumber("nobody"), InstrumentKind.OTHER);
        try (Workshop workshop = Workshop.in(folder)) {
            assertThatExceptionOfType(RefusedEntryException.class)
                    .isThrownBy(() -> workshop.archive.instruments().add(other))
                    .withMessageContaining("T-17 is taken");
            assertThatExceptionOfType(RefusedEntryException.class)
                    .isThrownBy(() -> workshop.archive.instruments().replace(stranger.shopNumber(), stranger))
                    .withMessageContaining("nobody");
            workshop.archive.instruments().replace(Workshop.NUMBER, other);
            assertThat(workshop.archive.instruments().all()).containsExactly(other);
        }
    }

    @Test
    void everyFieldOfASittingComesBack() {
        Conditions conditions = new Conditions(
                Optional.of(Stage.STRUNG),
                new Air(Optional.of(21.4), Optional.of(47.5), Optional.of(30.5)),
                new Strings(
                        Optional.of(StringState.DAMPED),
                        Optional.of("normal set"),
                        Optional.of(LocalDate.of(2026, 3, 1))),
                HoleState.COVERED,
                new Placing(Optional.of("foam"), Optional.of("knuckle"), Optional.of("bridge")),
                new Microphone(Optional.of("small diaphragm"), Optional.of(500.0), Optional.of("knob at 4")),
                Optional.of(new AddedMass(20.5, Optional.of("bridge, middle"))),
                Optional.of("the apprentice"),
                Optional.of("two\nlines"));
        Moment day = Moment.on(LocalDate.of(2026, 3, 13), ZoneOffset.UTC);
        TapResult first = TestResults.of(101.5, 204.25, "taps-1");
        TapResult second = TestResults.of(101.75, 205.5, "taps-2");
        GivenName name = new GivenName(204.25, Optional.of("main top"), NOW.plusSeconds(5));
        KeptRecording recording;
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            SittingStore store = workshop.archive.sittings();
            NewSitting sitting = newSitting(store, day, conditions, first);
            StagedOriginal staged = sitting.recordings().get(0).staged();
            recording = new KeptRecording(staged.original(), "taps.wav", FACTS);
            SittingId id = store.add(sitting);
            assertThat(store.addAnalysis(id, new NewAnalysis(NOW.plusSeconds(9), new Findings.OfTaps(second)))
                            .number())
                    .isEqualTo(2);
            store.addName(id, name);
        }
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            Sitting back = workshop.archive.sittings().find(new SittingId(1)).orElseThrow();
            assertThat(back)
                    .isEqualTo(new Sitting(
                            new SittingId(1),
                            Workshop.NUMBER,
                            day,
                            NOW,
                            conditions,
                            List.of(recording),
                            List.of(
                                    new Analysis(1, NOW, new Findings.OfTaps(first)),
                                    new Analysis(2, NOW.plusSeconds(9), new Findings.OfTaps(second))),
                            List.of(name),
                            Optional.empty()));
        }
    }

    @Test
    void whatIsUnknownStaysUnknown() {
        TapResult nothing = new TapResult(
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                TestResults.of(1, 2, "").settings(),
                "x");
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            SittingStore store = workshop.archive.sittings();
            SittingId id = store.add(newSitting(store, Moment.at(NOW), Conditions.UNKNOWN, nothing));
            Sitting back = store.find(id).orElseThrow();
            assertThat(back.conditions()).isEqualTo(Conditions.UNKNOWN);
            assertThat(back.latest().taps()).contains(nothing);
            assertThat(store.find(new SittingId(id.number() + 1))).isEmpty();
        }
    }

    @Test
    void theListShowsTheLatestAnalysisUnderTheNamesThatHold() {
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            SittingStore store = workshop.archive.sittings();
            TapResult first = TestResults.of(101.5, 204.25, "taps-1");
            SittingId id = store.add(newSitting(store, Moment.at(NOW), Conditions.UNKNOWN, first));
            store.addAnalysis(id, new NewAnalysis(NOW, new Findings.OfTaps(TestResults.of(101.75, 205.5, "taps-2"))));
            store.addName(id, new GivenName(204.25, Optional.of("main top"), NOW));

            List<SittingSummary> all = store.list(Optional.empty());

            assertThat(all).hasSize(1);
            assertThat(all.get(0).resonances())
                    .containsExactly(
                            new SittingSummary.Line(101.75, Optional.of("main air")),
                            new SittingSummary.Line(205.5, Optional.of("main top")));
            assertThat(store.list(Optional.of(Workshop.NUMBER))).isEqualTo(all);
            assertThat(store.list(Optional.of(new ShopNumber("nobody")))).isEmpty();
        }
    }

    @Test
    void earlierSittingsComeFirstToTheFractionOfASecond() {
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            SittingStore store = workshop.archive.sittings();
            TapResult result = TestResults.of(100, 200, "taps-1");
            Instant whole = Instant.parse("2026-03-14T09:00:00Z");
            store.add(newSitting(store, Moment.at(whole.plusMillis(500)), Conditions.UNKNOWN, result));
            store.add(newSitting(store, Moment.at(whole), Conditions.UNKNOWN, result));

            assertThat(store.list(Optional.empty()))
                    .extracting(s -> s.id().number())
                    .containsExactly(2L, 1L);
        }
    }

    @Test
    void nothingIsAddedToASittingThatDoesNotExist() {
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            SittingStore store = workshop.archive.sittings();
            assertThatExceptionOfType(RefusedEntryException.class)
                    .isThrownBy(() -> store.addName(new SittingId(5), new GivenName(100, Optional.empty(), NOW)))
                    .withMessageContaining("no sitting 5");
        }
    }

    private NewSitting newSitting(SittingStore store, Moment takenAt, Conditions conditions, TapResult result) {
        StagedOriginal staged = store.stage(TestWav.write(folder.resolve("taps.wav"), 1));
        return new NewSitting(
                Workshop.NUMBER,
                takenAt,
                NOW,
                conditions,
                List.of(new NewSitting.NewRecording(staged, FACTS)),
                new NewAnalysis(NOW, new Findings.OfTaps(result)));
    }
}
