package io.github.tapwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.archive.Archive;
import io.github.tapwright.comparison.SetUpSpread.Basis;
import io.github.tapwright.comparison.played.PlayedQuantity;
import io.github.tapwright.comparison.played.StudyPlaying;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.NewAnalysis;
import io.github.tapwright.sitting.NewSitting;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.tap.TapSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Studies kept of sittings that were analysed anew since, on a real archive: what no longer tells anything no longer holds. */
class KeptStudyTest {

    private static final Instant START = Instant.parse("2025-01-10T12:00:00Z");
    private static final ShopNumber NUMBER = new ShopNumber("51");

    @TempDir
    Path folder;

    private Archive archive;

    @BeforeEach
    void open() {
        archive = Archive.open(folder.resolve("archive"), Clock.fixed(START, ZoneOffset.UTC));
        archive.instruments().add(Instrument.of(NUMBER, InstrumentKind.CLASSICAL));
    }

    @AfterEach
    void close() {
        archive.close();
    }

    private StudyBench bench() {
        return new StudyBench(archive.sittings(), archive.benchStudies(), Clock.systemUTC());
    }

    private StudyPlaying playing() {
        return new StudyPlaying(archive.sittings(), archive.benchStudies(), Clock.systemUTC());
    }

    private SittingId add(int number, Findings findings) throws IOException {
        Conditions conditions = InventedSittings.KNOWN;
        Instant at = START.plus(Duration.ofMinutes(number));
        var made = InventedBody.of(number, NUMBER.text(), at, conditions, findings);
        Path file = Files.writeString(folder.resolve("recording.wav"), "recording " + number);
        return archive.sittings()
                .add(new NewSitting(
                        NUMBER,
                        made.takenAt(),
                        at,
                        conditions,
                        made.recordings().stream()
                                .map(r -> new NewSitting.NewRecording(
                                        archive.sittings().stage(file), r.facts()))
                                .toList(),
                        new NewAnalysis(at, findings)));
    }

    private static Findings taps(double moved) {
        return new InventedBody(moved, moved, moved, 1)
                .sitting(1, NUMBER.text(), START, InventedSittings.KNOWN)
                .latest()
                .findings();
    }

    private static Findings plucks(double... levels) {
        List<Pluck> plucks = new ArrayList<>();
        for (double db : levels) {
            plucks.add(new Pluck(
                    0, plucks.size(), Optional.of(1), Optional.of(db), Optional.empty(), Optional.empty(), List.of()));
        }
        return new Findings.OfPlucks(new PluckRun(plucks, Tuning.CLASSICAL, Optional.empty(), "invented-1"));
    }

    private static Findings nothing() {
        return new Findings.OfTaps(
                new TapResult(List.of(), Optional.empty(), List.of(), List.of(), TapSettings.STANDARD, "invented-1"));
    }

    private void analyseAnew(SittingId id, Findings findings) {
        archive.sittings().addAnalysis(id, new NewAnalysis(START.plus(Duration.ofDays(1)), findings));
    }

    @Test
    void aStudyOfTapsInWhichNoResonanceIsLeftHoldsNoLonger() throws IOException {
        List<SittingId> ids = List.of(add(1, taps(1)), add(2, taps(1.001)), add(3, taps(0.999)));
        bench().keep(ids);
        assertThat(bench().spread(Optional.empty()).frequency().basis()).isEqualTo(Basis.STUDIED);

        analyseAnew(ids.get(2), nothing());

        assertThat(bench().kept().study()).isEmpty();
        assertThat(bench().kept().lapse().orElseThrow()).contains("no resonance was found in every set-up");
        assertThat(bench().spread(Optional.empty())).isEqualTo(SetUpSpread.LAPSED);
    }

    @Test
    void aStudyOfPlucksInWhichNoQuantityIsLeftHoldsNoLongerEither() throws IOException {
        List<SittingId> ids = List.of(add(1, plucks(70, 71)), add(2, plucks(70, 72)), add(3, plucks(69, 71)));
        playing().keep(ids);

        analyseAnew(ids.get(2), plucks(70));

        String kind = Procedure.OpenPlucks.KEY;
        assertThat(playing().kept(kind).study()).isEmpty();
        assertThat(playing().kept(kind).lapse().orElseThrow()).contains("no string has two plucks");
        assertThat(playing()
                        .spread(kind, Optional.empty())
                        .of(PlayedQuantity.LEVEL)
                        .basis())
                .isEqualTo(Basis.LAPSED);
    }

    @Test
    void whereNoneWasKeptTheCautiousFiguresDoNotSpeakOfOne() {
        assertThat(bench().spread(Optional.empty())).isEqualTo(SetUpSpread.USUAL);
        assertThat(playing()
                        .spread(Procedure.OpenPlucks.KEY, Optional.empty())
                        .of(PlayedQuantity.LEVEL)
                        .basis())
                .isEqualTo(Basis.ASSUMED);
    }
}
