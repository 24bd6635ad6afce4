package io.github.tapwright.report;

import io.github.tapwright.mode.Resonance;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.report.picture.CurvePicture;
import io.github.tapwright.report.xhtml.Element;
import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.tap.Strike;
import java.util.ArrayList;
import java.util.List;

/** What taps found, with every number. */
final class WorkshopTaps {

    private final Matter matter;
    private final TapResult result;
    private final Sitting sitting;

    WorkshopTaps(Matter matter, TapResult result) {
        this.matter = matter;
        this.result = result;
        this.sitting = matter.sitting();
    }

    List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        response(sections);
        sections.add(resonances());
        sections.add(strikes());
        List<String> warnings = warnings();
        if (!warnings.isEmpty()) {
            sections.add(Section.of("Warnings", Words.list(warnings)));
        }
        return sections;
    }

    private void response(List<Section> sections) {
        CurvePicture picture = new CurvePicture("");
        picture.add("sitting " + sitting.id(), sitting);
        picture.onPage()
                .ifPresent(p -> sections.add(Section.of(
                        "Response",
                        matter.pictures()
                                .figure(
                                        p,
                                        "Response curve with its resonances",
                                        "Response to taps, the strength of the taps taken out; dB re its highest point. Shaded: 95 % interval of"
                                                + " the mean over the used strikes; figures: ± one standard uncertainty. Resolution "
                                                + result.curve()
                                                        .map(c -> Figures.text(c.resolutionHz(), 2))
                                                        .orElse("unknown")
                                                + " Hz."))));
    }

    private Section resonances() {
        Grid grid = Grid.of("no.", "frequency (Hz)", "Q", "decay time (s)", "level (dB)", "strikes", "name|");
        List<String> reasons = new ArrayList<>();
        for (ShownResonance shown : sitting.resonances(sitting.latest())) {
            Resonance r = shown.found().resonance();
            grid.add(
                    Integer.toString(shown.ordinal()),
                    Figures.text(r.frequencyHz()),
                    Figures.text(r.q()),
                    Figures.text(r.decayTimeSeconds()),
                    Figures.text(r.levelDb()),
                    Integer.toString(r.strikeCount()),
                    shown.name().orElse("–"));
            String reason = shown.reason() + (r.note().isEmpty() ? "" : "; " + r.note());
            if (!reason.isEmpty()) {
                reasons.add(shown.ordinal() + ", " + shown.name().orElse("no name") + ": " + reason);
            }
        }
        if (grid.isEmpty()) {
            return Section.of("Resonances", Words.paragraph("None was found; the strikes below say why."));
        }
        List<Node> content = new ArrayList<>(List.<Element>of(
                grid.element(),
                Words.quiet(
                        "± one standard uncertainty; decay time for 60 dB; 0 dB is the strongest resonance found, listed or not."),
                Words.list(reasons)));
        return new Section("Resonances", content);
    }

    private Section strikes() {
        Grid grid = Grid.of("no.", "recording", "time (s)", "peak (dBFS)", "SNR (dB)", "verdict|");
        int number = 0;
        for (Strike s : result.strikes()) {
            number++;
            grid.add(
                    Integer.toString(number),
                    Integer.toString(s.source() + 1),
                    Figures.text(s.onsetSeconds(), 3),
                    Figures.text(s.peakDbfs(), 1),
                    Figures.text(s.snrDb(), 1),
                    s.used() ? "used" : "rejected: " + s.reasons());
        }
        return grid.isEmpty()
                ? Section.of(
                        "Strikes",
                        Words.paragraph("Nothing in the recordings stands out from their noise as a tap does."))
                : Section.of("Strikes", grid.element());
    }

    private List<String> warnings() {
        List<String> all = new ArrayList<>(result.warnings());
        for (GivenName g : sitting.unmatchedNames(sitting.latest())) {
            all.add("the name “" + g.name().orElse("none") + "” was given at " + Figures.text(g.frequencyHz(), 1)
                    + " Hz, where this analysis finds no resonance");
        }
        return all;
    }
}
