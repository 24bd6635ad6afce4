package io.github.tapwright.cli;

import io.github.tapwright.comparison.TapSittings;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.report.picture.CurvePicture;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.tap.Strike;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;

/** Tells what was found on each instrument of the demo. */
final class DemoStory {

    private final Terminal terminal;
    private final ZoneId zone;

    DemoStory(Terminal terminal, ZoneId zone) {
        this.terminal = terminal;
        this.zone = zone;
    }

    void tell(Instrument instrument, List<Sitting> sittings) {
        String top =
                instrument.construction().kind().map(ConstructionKind::words).orElse("construction unknown");
        terminal.say(
                "%nInstrument %s (invented), %s, %s",
                instrument.shopNumber(), instrument.kind().words(), top);
        List<ShownResonance> body = resonances(sittings);
        sittings.forEach(s -> tell(s, body));
    }

    /** One picture with the curves of all sittings of an instrument. */
    void draw(Instrument instrument, List<Sitting> sittings, Path folder) {
        CurvePicture picture =
                new CurvePicture("Instrument " + instrument.shopNumber() + " (invented), response to taps");
        sittings.stream().filter(s -> s.latest().taps().isPresent()).forEach(s -> picture.add(label(s), s));
        Output.to(folder, () -> Files.createDirectories(folder));
        // a number is any text, and the description may be somebody else's: it must not lead out of the folder
        String number = instrument.shopNumber().text().replaceAll("[^\\p{L}\\p{Nd}-]+", "_");
        Path file = folder.resolve("instrument-" + number + ".png");
        if (Output.tryTo(file, () -> picture.write(file))) {
            terminal.say("  picture: %s", file);
        }
    }

    private void tell(Sitting sitting, List<ShownResonance> body) {
        if (sitting.latest().findings().notes().isPresent()) {
            terminal.say("  sitting %s, %s, a run of notes", sitting.id(), label(sitting));
            new FingerboardText(terminal)
                    .printSummary(sitting.latest().findings().notes().get(), body);
        } else {
            tellTaps(sitting);
        }
    }

    /** The resonances of the latest taps on the body as it is: a dead note may lie beside one of them. */
    private static List<ShownResonance> resonances(List<Sitting> sittings) {
        return sittings.stream()
                .filter(s -> s.latest().taps().isPresent())
                .filter(s -> TapSittings.objection(SittingOutline.of(s)).isEmpty())
                .reduce((earlier, later) -> later)
                .map(s -> s.resonances(s.latest()))
                .orElse(List.of());
    }

    private void tellTaps(Sitting sitting) {
        List<Strike> strikes = sitting.latest().taps().map(TapResult::strikes).orElse(List.of());
        long used = strikes.stream().filter(Strike::used).count();
        terminal.say("  sitting %s, %s: %d of %d strikes used", sitting.id(), label(sitting), used, strikes.size());
        strikes.stream()
                .filter(s -> !s.used())
                .forEach(s -> terminal.say(
                        "    strike at %s s rejected: %s", Figures.text(s.onsetSeconds(), 2), s.reasons()));
        sitting.resonances(sitting.latest())
                .forEach(r -> r.name()
                        .ifPresent(n -> terminal.say(
                                "    %-12s %s Hz, Q %s",
                                n,
                                Figures.text(r.found().resonance().frequencyHz()),
                                Figures.text(r.found().resonance().q()))));
    }

    private String label(Sitting sitting) {
        String day = sitting.takenAt().text(zone).substring(0, 10);
        String stage = sitting.conditions().stage().map(Stage::words).orElse("stage unknown");
        return day + ", " + stage + (sitting.conditions().hole() == HoleState.COVERED ? ", hole covered" : "");
    }
}
