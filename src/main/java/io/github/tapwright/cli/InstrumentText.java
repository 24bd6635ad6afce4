package io.github.tapwright.cli;

import io.github.tapwright.instrument.Body;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.Layer;
import io.github.tapwright.sitting.FormerNumber;
import io.github.tapwright.statistics.Figures;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** All that is known about an instrument, for people; what is not known says so. */
final class InstrumentText {

    private final Terminal terminal;
    private final ZoneId zone;

    InstrumentText(Terminal terminal, ZoneId zone) {
        this.terminal = terminal;
        this.zone = zone;
    }

    void print(Instrument instrument, List<FormerNumber> formerNumbers) {
        Body body = instrument.body();
        Construction top = instrument.construction();
        terminal.say(
                "Instrument %s, %s", instrument.shopNumber(), instrument.kind().words());
        line("nickname", instrument.nickname());
        line("scale length", body.scaleLengthMm().map(mm -> Figures.plain(mm) + " mm"));
        line("strings", body.stringCount().map(Object::toString));
        line("soundhole", body.soundholeDiameterMm().map(mm -> Figures.plain(mm) + " mm across"));
        line("body notes", body.notes());
        line("top", top.kind().map(ConstructionKind::words));
        line("outer skin", layer(top.outerSkin()));
        if (!top.kind().equals(Optional.of(ConstructionKind.SOLID))) {
            line("core", layer(top.core()));
            line("inner skin", layer(top.innerSkin()));
        }
        line("bracing", top.bracing());
        line("notes", instrument.notes());
        formerNumbers.forEach(f -> terminal.say(
                "  before it was renumbered on %s: %s", LocalDate.ofInstant(f.until(), zone), f.shopNumber()));
    }

    private void line(String what, Optional<String> text) {
        terminal.say("  %-14s%s", what, text.orElse("unknown"));
    }

    private static Optional<String> layer(Layer layer) {
        if (!layer.known()) {
            return Optional.empty();
        }
        String material = layer.material().orElse("material unknown");
        return Optional.of(layer.thicknessMm()
                .map(mm -> material + ", " + Figures.plain(mm) + " mm")
                .orElse(material + ", thickness unknown"));
    }
}
