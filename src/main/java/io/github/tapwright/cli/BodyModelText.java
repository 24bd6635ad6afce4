package io.github.tapwright.cli;

import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.body.FittedBody;
import io.github.tapwright.comparison.body.ScaleNote;
import io.github.tapwright.mode.body.Answer;
import io.github.tapwright.mode.body.BodyQuantity;
import io.github.tapwright.mode.body.Prediction;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A fitted body for people: what is known, what is missing, what to measure next, what a change would do. */
final class BodyModelText {

    private final Terminal terminal;
    private final ZoneId zone;

    BodyModelText(Terminal terminal, ZoneId zone) {
        this.terminal = terminal;
        this.zone = zone;
    }

    void print(FittedBody body) {
        printSittings(body);
        printKnown(body);
        printMissing(body);
        printTraps(body);
        body.whatIf().ifPresent(this::print);
    }

    private void printSittings(FittedBody body) {
        terminal.say("Instrument %s", body.open().instrument());
        terminal.say("  hole open: %s", label(body.open()));
        terminal.say("  hole covered: %s", body.covered().map(this::label).orElse("none found"));
        terminal.say("  with a mass: %s", body.loaded().map(this::label).orElse("none found"));
        body.remarks().forEach(r -> terminal.say("  - %s", r));
        terminal.say(
                "  Setting up again moves frequencies by %s, %s; that is part of every uncertainty.",
                body.spread().words(Quantity.FREQUENCY),
                body.spread().frequency().basis().words());
    }

    private String label(Sitting s) {
        String mass = s.conditions().addedMass().map(BodyModelText::mass).orElse("");
        return "sitting " + s.id() + ", " + s.takenAt().text(zone) + mass;
    }

    private static String mass(AddedMass mass) {
        return ", " + Figures.plain(mass.grams()) + " g"
                + mass.place().map(p -> " on " + p).orElse("");
    }

    private void printKnown(FittedBody body) {
        Table table = new Table("± standard uncertainty", "95 % interval", "unit", "what");
        boolean any = false;
        for (Map.Entry<BodyQuantity, Answer> entry : body.model().answers().entrySet()) {
            Optional<Answer.Inferred> found = entry.getValue().inferred();
            if (found.isPresent()) {
                Shown shown = Shown.of(entry.getKey());
                Answer.Inferred figure = found.get().times(shown.factor);
                table.add(
                        Figures.text(Estimate.of(figure.value(), figure.standardUncertainty())),
                        Figures.interval(figure.interval95()),
                        shown.unit,
                        entry.getKey().words());
                any = true;
            }
        }
        terminal.say("%nWhat is known");
        if (any) {
            table.lines().forEach(terminal.out()::println);
        } else {
            terminal.say("  nothing beyond the resonances themselves");
        }
    }

    private void printMissing(FittedBody body) {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        body.model().answers().forEach((quantity, answer) -> {
            String reason = answer instanceof Answer.Missing m
                    ? m.need()
                    : answer instanceof Answer.Contradicted c ? c.why() : "";
            if (!reason.isEmpty()) {
                byReason.computeIfAbsent(reason, r -> new ArrayList<>()).add(quantity.words());
            }
        });
        if (!byReason.isEmpty()) {
            terminal.say("%nWhat is not known");
            byReason.forEach((reason, what) -> terminal.say("  - %s: %s", String.join("; ", what), reason));
        }
        terminal.say("%nNext: %s", next(body));
    }

    private static String next(FittedBody body) {
        if (body.covered().isEmpty()) {
            return "one more sitting with the hole covered, stiff and airtight, nothing else changed. It gives the air's"
                    + " frequency in the hole and the top's own.";
        }
        if (body.loaded().isEmpty()) {
            return "one more sitting with the hole open and 10 to 25 g on the middle of the bridge. It gives the moving mass"
                    + " and the stiffness. Wax or putty holds it; try on an unseen spot that it does not mark the finish"
                    + " (common practice, no source).";
        }
        if (body.model().readings().measures().volumeCubicMetres().isEmpty()) {
            return "the volume of the box with --volume. It gives the top's area and how loud it can be.";
        }
        return "nothing; all that this model can tell is there.";
    }

    private void printTraps(FittedBody body) {
        terminal.say("%nMind");
        terminal.say(
                "  - The dip between main air and main top in a microphone's curve is not the air's frequency in the hole;"
                        + " it lies several Hz higher.");
        body.model()
                .naiveMassKilograms()
                .ifPresent(m -> terminal.say(
                        "  - The main top alone would make the mass %s g; with the hole open that is wrong, by a quarter in usual"
                                + " guitars, because the air carries part of the motion.",
                        Figures.text(1000 * m, 1)));
    }

    private void print(FittedBody.WhatIf whatIf) {
        terminal.say("%nWhat if: %s", words(whatIf));
        if (whatIf.prediction() instanceof Prediction.Refused refused) {
            terminal.say("  %s", refused.why());
        }
        if (whatIf.prediction() instanceof Prediction.Foreseen foreseen) {
            Table table = new Table("now (Hz)", "then (Hz)", "shift (Hz)", "nearest note", "place");
            foreseen.resonances().forEach(r -> table.add(row(r)));
            table.lines().forEach(terminal.out()::println);
            terminal.say("  ± is one standard uncertainty. Within 25 cents of a note that is played lies a wolf's place"
                    + " (common practice, no source).");
            terminal.say("  A model is not a plane: take off little, tap again, and compare.");
        }
    }

    private static String words(FittedBody.WhatIf whatIf) {
        List<String> words = new ArrayList<>();
        add(words, "mass", 1000 * whatIf.change().massKilograms(), "g");
        add(words, "stiffness", 100 * whatIf.change().stiffnessShare(), "%");
        add(words, "radius of the hole", 1000 * whatIf.change().holeRadiusMetres(), "mm");
        add(words, "volume", 1000 * whatIf.change().volumeCubicMetres(), "l");
        return words.isEmpty() ? "nothing changed" : String.join(", ", words);
    }

    private static void add(List<String> words, String what, double figure, String unit) {
        if (figure != 0) {
            words.add(what + " " + Figures.difference(figure, 1) + " " + unit);
        }
    }

    private static String[] row(Prediction.Moved moved) {
        ScaleNote note = ScaleNote.of(moved.afterHz());
        return new String[] {
            Figures.text(moved.beforeHz(), 2),
            Figures.text(Estimate.of(moved.afterHz().value(), moved.afterHz().standardUncertainty()), 2),
            Figures.text(Estimate.of(moved.shiftHz().value(), moved.shiftHz().standardUncertainty()), 2),
            note.note() + " " + Figures.difference(note.cents(), 0) + " cents",
            note.place().words()
        };
    }

    /** Grams and kilonewtons per metre, as a maker reads them. */
    private record Shown(double factor, String unit) {

        static Shown of(BodyQuantity quantity) {
            return switch (quantity) {
                case TOP_MASS, TOP_MASS_BY_SUM -> new Shown(1000, "g");
                case TOP_STIFFNESS -> new Shown(0.001, "kN/m");
                default -> new Shown(1, quantity.unit());
            };
        }
    }
}
