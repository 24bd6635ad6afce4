package io.github.tapwright.report;

import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.Layer;
import io.github.tapwright.report.xhtml.Element;
import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.report.xhtml.Tag;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.statistics.Figures;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A sitting with every number, every setting and every hash. */
final class WorkshopReport {

    private WorkshopReport() {}

    /** What was found; conditions, recordings, methods and cautions follow in {@link #close}. */
    static List<Section> findings(Matter matter) {
        Findings findings = matter.sitting().latest().findings();
        return findings.taps()
                .map(result -> new WorkshopTaps(matter, result).sections())
                .or(() -> findings.notes().map(board -> WorkshopNotes.sections(matter, board)))
                .or(() -> findings.plucks().map(WorkshopNotes::plucks))
                .orElse(List.of());
    }

    /** Conditions, recordings and methods, of the earlier sitting too where there is one. */
    static List<Section> close(Matter matter, Optional<Sitting> earlier) {
        Map<String, Sitting> sittings = new LinkedHashMap<>();
        earlier.ifPresent(a -> sittings.put(" of A, sitting " + a.id(), a));
        sittings.put(earlier.map(a -> " of B, sitting " + matter.sitting().id()).orElse(""), matter.sitting());
        List<Section> sections = new ArrayList<>();
        sittings.forEach((whose, s) -> sections.add(RoomAndSetUp.inFull("Conditions" + whose, s.conditions())));
        sections.add(instrument(matter.instrument()));
        sittings.forEach((whose, s) -> sections.add(recordings("Recordings kept" + whose, s)));
        sittings.forEach((whose, s) -> sections.add(methods("Methods and settings" + whose, s)));
        if (matter.sitting().latest().taps().isPresent()) {
            sections.add(uncertainty(matter));
        }
        sections.add(Cautions.section());
        return sections;
    }

    private static Section instrument(Instrument instrument) {
        Construction top = instrument.construction();
        Element pairs = new Words.Pairs()
                .add("shop number", instrument.shopNumber().text())
                .add("kind", instrument.kind().words())
                .add("nickname", instrument.nickname())
                .add("scale length", instrument.body().scaleLengthMm().map(mm -> Figures.plain(mm) + " mm"))
                .add("strings", instrument.body().stringCount().map(Object::toString))
                .add("soundhole", instrument.body().soundholeDiameterMm().map(mm -> Figures.plain(mm) + " mm across"))
                .add("body notes", instrument.body().notes())
                .add("top", top.kind().map(ConstructionKind::words))
                .add("outer skin", layer(top.outerSkin()))
                .add("core", layer(top.core()))
                .add("inner skin", layer(top.innerSkin()))
                .add("bracing", top.bracing())
                .add("notes", instrument.notes())
                .element();
        return Section.of("Instrument", pairs);
    }

    private static Optional<String> layer(Layer layer) {
        return Optional.of(layer)
                .filter(Layer::known)
                .map(l -> l.material().orElse("material unknown") + ", "
                        + l.thicknessMm().map(mm -> Figures.plain(mm) + " mm").orElse("thickness unknown"));
    }

    private static Section recordings(String title, Sitting sitting) {
        Grid grid = Grid.of("no.", "file|", "format|", "rate (Hz)", "channel", "length (s)", "bytes");
        List<Node> hashes = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        int number = 0;
        for (KeptRecording r : sitting.recordings()) {
            number++;
            grid.add(
                    Integer.toString(number),
                    r.fileName(),
                    r.facts().format(),
                    Figures.plain(r.facts().sampleRateHz()),
                    (r.facts().channelUsed() + 1) + " of " + r.facts().channelCount(),
                    Figures.text(r.facts().durationSeconds(), 3),
                    Long.toString(r.original().sizeBytes()));
            hashes.add(Element.of(Tag.P, number + ": SHA-256 " + r.original().sha256())
                    .with("class", "hash"));
            r.facts().remarks().forEach(remark -> remarks.add(r.fileName() + ": " + remark));
        }
        List<Node> content = new ArrayList<>(List.of(grid.element()));
        content.addAll(hashes);
        if (!remarks.isEmpty()) {
            content.add(Words.list(remarks));
        }
        return new Section(title, content);
    }

    private static Section methods(String title, Sitting sitting) {
        Grid grid = Grid.of("analysis", "made at (UTC)", "method", "settings|");
        for (Analysis a : sitting.analyses()) {
            grid.add(
                    Integer.toString(a.number()),
                    a.madeAt().truncatedTo(ChronoUnit.SECONDS).toString(),
                    a.methodVersion(),
                    SettingsWords.of(a.findings().procedure()));
        }
        return Section.of(
                title,
                grid.element(),
                Words.quiet("The figures above are those of the last analysis. Sitting added at "
                        + sitting.addedAt().truncatedTo(ChronoUnit.SECONDS) + "."));
    }

    private static Section uncertainty(Matter matter) {
        return Section.of(
                "What the ± mean",
                Words.paragraph(
                        "In the tables above ± is one standard uncertainty of this set of recordings alone (GUM). Setting up"
                                + " again adds to it: " + matter.spread().words(Quantity.FREQUENCY) + " of frequency, "
                                + matter.spread().words(Quantity.Q) + " of Q and decay time, "
                                + matter.spread().words(Quantity.LEVEL) + " of level as standard deviations, "
                                + matter.spread().basisWords()
                                + ". The clock of the sound card is in neither: cards are commonly"
                                + " true to 50 parts in a million, 0.01 Hz at 200 Hz (common practice, no source)."));
    }
}
