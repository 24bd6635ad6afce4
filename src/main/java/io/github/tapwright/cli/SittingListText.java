package io.github.tapwright.cli;

import io.github.tapwright.instrument.Stage;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.statistics.Figures;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Sittings on one line each, for people. */
final class SittingListText {

    private final Terminal terminal;
    private final ZoneId zone;

    SittingListText(Terminal terminal, ZoneId zone) {
        this.terminal = terminal;
        this.zone = zone;
    }

    void print(List<SittingSummary> sittings) {
        if (sittings.isEmpty()) {
            terminal.say("No sittings yet; add one with: tapwright sitting add NUMBER FILE…");
            return;
        }
        Table table = new Table("sitting", "instrument", "taken", "stage", "hole", "for", "named resonances (Hz)");
        sittings.forEach(s -> table.add(
                s.id().toString(),
                s.instrument().text(),
                s.takenAt().text(zone),
                s.stage().map(Stage::words).orElse("unknown"),
                s.hole().name().toLowerCase(Locale.ROOT),
                s.procedure(),
                named(s)));
        table.lines().forEach(terminal.out()::println);
    }

    private static String named(SittingSummary sitting) {
        if (sitting.setAside().isPresent()) {
            return "set aside: " + sitting.setAside().get().reason();
        }
        if (!sitting.procedure().equals(Procedure.BodyTaps.KEY)) {
            return "";
        }
        String named = sitting.resonances().stream()
                .flatMap(r -> r.name().stream().map(n -> n + " " + Figures.text(r.frequencyHz(), 1)))
                .collect(Collectors.joining(", "));
        return named.isEmpty() ? "none of " + sitting.resonances().size() : named;
    }
}
