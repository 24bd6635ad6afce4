package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.recording.UnreadableRecordingException;
import io.github.tapwright.sitting.AddInstrument;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.EditInstrument;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.ListInstruments;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.NameResonance;
import io.github.tapwright.sitting.NewAnalysis;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.ReanalyseSitting;
import io.github.tapwright.sitting.ShowInstrument;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingRequest;
import io.github.tapwright.tap.TapSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The use cases on a real archive with real sound files. */
class AddSittingTest {

    @TempDir
    Path folder;

    private Workshop workshop;

    @BeforeEach
    void open() {
        workshop = Workshop.in(folder.resolve("archive"));
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    @Test
    void keepsTheRecordingsBitForBitWithTheirFacts() throws IOException {
        Path taps = TestWav.write(folder.resolve("Bridge Taps.WAV"), 1);

        Sitting sitting = workshop.add(taps);

        KeptRecording kept = sitting.recordings().get(0);
        assertThat(kept.fileName()).isEqualTo("Bridge Taps.WAV");
        assertThat(kept.original().extension()).isEqualTo("wav");
        assertThat(kept.facts().sampleRateHz()).isEqualTo(8000);
        assertThat(kept.facts().durationSeconds()).isEqualTo(1);
        assertThat(kept.facts().format()).isEqualTo("WAV");
        assertThat(kept.facts().notices()).isEmpty();
        assertThat(workshop.archive.sittings().locate(kept.original())).hasSameBinaryContentAs(taps);
        assertThat(sitting.takenAt()).isEqualTo(Moment.at(Workshop.CLOCK.instant()));
        assertThat(new ShowSitting(workshop.archive.sittings()).show(sitting.id()))
                .isEqualTo(sitting);
        assertThat(incoming()).isEmpty();
    }

    @Test
    void tellsWhatItIsDoing() {
        List<String> steps = new ArrayList<>();
        Path taps = TestWav.write(folder.resolve("taps.wav"), 1);

        workshop.addSitting().add(request(Workshop.NUMBER, taps), (step, done, total) -> {
            steps.add(step);
            assertThat(done).isLessThanOrEqualTo(total);
        });

        assertThat(steps)
                .as("the analysis within ends by itself")
                .containsExactly(
                        "copying taps.wav",
                        "reading taps.wav",
                        "finding resonances",
                        "done",
                        "keeping the sitting",
                        "done");
    }

    @Test
    void anUnreadableFileLeavesNothingBehind() throws IOException {
        Path taps = TestWav.write(folder.resolve("taps.wav"), 1);
        Path letter = Files.writeString(folder.resolve("letter.wav"), "Dear customer");

        assertThatExceptionOfType(UnreadableRecordingException.class)
                .isThrownBy(() -> workshop.add(taps, letter))
                .withMessageContaining("letter.wav")
                .withMessageNotContaining("incoming");

        assertThat(workshop.archive.sittings().list(Optional.empty())).isEmpty();
        assertThat(incoming()).isEmpty();
        assertThat(letter).hasContent("Dear customer");
        assertThat(workshop.archive.verify(Progress.SILENT).unreferenced()).isEmpty();
    }

    @Test
    void refusesUnknownInstrumentsMissingFilesAndOneRecordingTwice() throws IOException {
        Path taps = TestWav.write(folder.resolve("taps.wav"), 1);
        Path same = Files.copy(taps, folder.resolve("copy.wav"));

        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> workshop.addSitting().add(request(new ShopNumber("nobody"), taps), Progress.SILENT))
                .withMessageContaining("nobody");
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> workshop.add(taps, same))
                .withMessageContaining("copy.wav holds the same recording");
        assertThatExceptionOfType(UnreadableRecordingException.class)
                .isThrownBy(() -> workshop.add(folder.resolve("gone.wav")))
                .withMessageContaining("there is no file");
        assertThatExceptionOfType(UnreadableRecordingException.class)
                .isThrownBy(() -> workshop.add(folder))
                .withMessageContaining("is no ordinary file");
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> request(Workshop.NUMBER))
                .withMessageContaining("needs a recording");
        assertThat(incoming()).isEmpty();
    }

    @Test
    void oneRecordingMayServeTwoSittingsAndIsKeptOnce() throws IOException {
        Path taps = TestWav.write(folder.resolve("taps.wav"), 1);
        Path same = Files.copy(taps, folder.resolve("copy.wave"));

        Sitting first = workshop.add(taps);
        Sitting second = workshop.add(same);

        assertThat(second.recordings().get(0).original())
                .isEqualTo(first.recordings().get(0).original());
        assertThat(new ListSittings(workshop.archive.instruments(), workshop.archive.sittings()).of(Workshop.NUMBER))
                .hasSize(2);
        assertThat(workshop.archive.verify(Progress.SILENT).originalCount()).isEqualTo(1);
    }

    @Test
    void analysingAgainAddsBesideTheOldUnlessNothingDiffers() {
        Sitting sitting = workshop.add(TestWav.write(folder.resolve("taps.wav"), 1));
        ReanalyseSitting again = new ReanalyseSitting(
                workshop.archive.sittings(), workshop.archive.calibrations(), TestWav.source(), Workshop.CLOCK);
        TapSettings narrow = TapSettings.STANDARD.withBand(80, 400);

        Analysis same = again.reanalyse(sitting.id(), Optional.empty(), Progress.SILENT);
        Analysis other = again.reanalyse(sitting.id(), Optional.of(narrow), Progress.SILENT);

        assertThat(same).isEqualTo(sitting.latest());
        assertThat(other.number()).isEqualTo(2);
        assertThat(new ShowSitting(workshop.archive.sittings())
                        .show(sitting.id())
                        .analyses())
                .containsExactly(sitting.latest(), other);
    }

    @Test
    void theMakersNameOutlivesANewAnalysisAndOneThatFitsNothingStaysVisible() {
        SittingId id =
                workshop.add(TestWav.write(folder.resolve("taps.wav"), 1)).id();
        keep(id, TestResults.of(101.5, 204.25, "taps-1"));
        NameResonance naming = new NameResonance(workshop.archive.sittings(), Workshop.CLOCK);

        naming.atOrdinal(id, 2, Optional.of("main top"));
        naming.atFrequency(id, 102, Optional.of("boom"));
        keep(id, TestResults.of(130, 205.5, "taps-2"));

        Sitting sitting = new ShowSitting(workshop.archive.sittings()).show(id);
        assertThat(sitting.resonances(sitting.latest()))
                .extracting(r -> r.name().orElse("-"))
                .containsExactly("main air", "main top");
        assertThat(sitting.unmatchedNames(sitting.latest()))
                .extracting(n -> n.name().orElse("-"))
                .containsExactly("boom");
        assertThat(sitting.resonances(sitting.analyses().get(1)))
                .extracting(r -> r.name().orElse("-"))
                .containsExactly("boom", "main top");
    }

    @Test
    void namesOnlyResonancesThatExist() {
        SittingId id =
                workshop.add(TestWav.write(folder.resolve("taps.wav"), 1)).id();
        keep(id, TestResults.of(101.5, 204.25, "taps-1"));
        NameResonance naming = new NameResonance(workshop.archive.sittings(), Workshop.CLOCK);

        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> naming.atFrequency(id, 150, Optional.of("main top")))
                .withMessageContaining("no resonance near 150.0 Hz");
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> naming.atOrdinal(id, 3, Optional.of("main top")))
                .withMessageContaining("has 2 resonances");
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> naming.atOrdinal(new SittingId(99), 1, Optional.empty()))
                .withMessageContaining("no sitting 99");
    }

    @Test
    void theShelfTakesShowsAndEditsInstruments() {
        Instrument instrument = Instrument.of(new ShopNumber("T-18"), InstrumentKind.OTHER);
        new AddInstrument(workshop.archive.instruments()).add(instrument);
        EditInstrument edit = new EditInstrument(workshop.archive.instruments());

        Instrument edited = edit.edit(
                instrument.shopNumber(),
                before -> new Instrument(
                        before.shopNumber(),
                        InstrumentKind.FLAMENCO,
                        before.body(),
                        before.construction(),
                        Optional.of("Loud"),
                        before.notes()));

        assertThat(new ShowInstrument(workshop.archive.instruments()).show(instrument.shopNumber()))
                .isEqualTo(edited);
        assertThat(new ListInstruments(workshop.archive.instruments()).list())
                .contains(edited)
                .hasSize(2);
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> edit.edit(
                        instrument.shopNumber(), before -> Instrument.of(Workshop.NUMBER, InstrumentKind.OTHER)))
                .withMessageContaining("is taken");
    }

    private void keep(SittingId id, TapResult result) {
        workshop.archive
                .sittings()
                .addAnalysis(id, new NewAnalysis(Workshop.CLOCK.instant(), new Findings.OfTaps(result)));
    }

    private static SittingRequest request(ShopNumber instrument, Path... files) {
        return new SittingRequest(
                instrument,
                Optional.empty(),
                Conditions.UNKNOWN,
                List.of(files),
                new Procedure.BodyTaps(TapSettings.STANDARD));
    }

    private List<Path> incoming() throws IOException {
        try (var entries = Files.list(folder.resolve("archive/originals/incoming"))) {
            return entries.toList();
        }
    }
}
