package io.github.tapwright.report;

import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.report.xhtml.Element;
import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.report.xhtml.Tag;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What the figures carry and what they do not. */
final class WhatItTells {

    private static final int MOST_LIMITS = 5;

    private WhatItTells() {}

    static Section of(Matter matter, List<String> alsoCannotTell) {
        Findings findings = matter.sitting().latest().findings();
        List<Node> words = new ArrayList<>();
        words.add(Words.paragraph("It can tell " + tells(findings)));
        words.add(Element.of(Tag.H3, "It cannot tell"));
        List<String> cannot = findings.taps().map(r -> ofTaps(matter, r)).orElseGet(() -> ofPlaying(findings));
        words.add(Words.list(
                Stream.concat(cannot.stream(), alsoCannotTell.stream()).toList()));
        List<String> limits = findings.taps()
                .map(TapResult::warnings)
                .orElseGet(() -> findings.notes()
                        .map(board ->
                                board.warnings().stream().limit(MOST_LIMITS).toList())
                        .orElse(List.of()));
        if (!limits.isEmpty()) {
            words.add(Element.of(Tag.H3, "Limits of these recordings"));
            words.add(Words.list(limits));
        }
        return new Section("What this tells, and what it cannot", words);
    }

    private static String tells(Findings findings) {
        if (findings.taps().isPresent()) {
            return "at which frequencies this body answers by itself, how long it rings there, and how strong one resonance is against"
                    + " another, on that day, in that air, set up that way.";
        }
        return findings.notes().isPresent()
                ? "how each recorded note sounded on that day: its pitch, how fast it died away, and which notes stand out from their"
                        + " neighbours."
                : "how loud each recorded pluck was at the microphone on that day.";
    }

    private static List<String> ofTaps(Matter matter, TapResult result) {
        List<String> cannot = new ArrayList<>();
        cannot.add(
                "whether the guitar is a good one, or whom it will please: no figure here has been shown to say that");
        cannot.add("how loud it is: levels here compare resonances of this one guitar with each other");
        cannot.add("how it sounds when played: strings, player and room are not in it");
        cannot.add("why a resonance lies where it lies, or what would move it");
        cannot.add(
                "whether it has changed: that takes two sittings, and even an unchanged guitar set up twice gives main resonances 19 times"
                        + " in 20 within " + shift(matter) + " of each other ("
                        + matter.spread().frequency().basis().words() + ")");
        long unnamed = result.resonances().size()
                - matter.sitting().resonances(matter.sitting().latest()).stream()
                        .filter(r -> r.name().isPresent())
                        .count();
        if (unnamed > 0) {
            cannot.add("how the body moves at the "
                    + (unnamed == 1 ? "other resonance" : unnamed + " other resonances")
                    + " found: a microphone in front does not show it");
        }
        return cannot;
    }

    private static List<String> ofPlaying(Findings findings) {
        List<String> cannot = new ArrayList<>();
        cannot.add("how strong each pluck was: a louder note may just have been plucked harder");
        cannot.add("how the guitar sounds in another room, with other strings or under another hand");
        cannot.add(
                findings.notes().isPresent()
                        ? "why a note dies away fast; a resonance of the body near it is a likely reason, not a proof"
                        : "whether another guitar is louder: that takes the same strings, the same player, the same place, and two runs each");
        return cannot;
    }

    private static String shift(Matter matter) {
        return Figures.text(100 * matter.spread().limit95(Quantity.FREQUENCY, 1), 1) + " %";
    }
}
