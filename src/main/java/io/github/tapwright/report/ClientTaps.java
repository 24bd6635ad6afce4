package io.github.tapwright.report;

import io.github.tapwright.comparison.InWords;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.TapSittings;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.note.NoteName;
import io.github.tapwright.report.picture.CurvePicture;
import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.tap.Strike;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What taps found, for somebody who plays the instrument. */
final class ClientTaps {

    private static final double A4_HZ = 440;

    private final Matter matter;
    private final TapResult result;
    private final List<ShownResonance> named;

    ClientTaps(Matter matter, TapResult result) {
        this.matter = matter;
        this.result = result;
        this.named = matter.sitting().resonances(matter.sitting().latest()).stream()
                .filter(r -> r.name().isPresent())
                .toList();
    }

    /** With a curve of its own, unless a comparison shows it beside another. */
    List<Section> sections(boolean withCurve) {
        List<Section> sections = new ArrayList<>();
        sections.add(inShort());
        if (withCurve) {
            curve().ifPresent(sections::add);
        }
        if (!named.isEmpty()) {
            sections.add(table());
        }
        return sections;
    }

    private Section inShort() {
        List<Node> words = new ArrayList<>();
        long used = result.strikes().stream().filter(Strike::used).count();
        String taps = result.strikes().isEmpty()
                ? "The recording was searched for taps on the body; none stands out from its noise."
                : "The body was tapped and the sound recorded; " + used + " of "
                        + Figures.count(result.strikes().size(), "tap") + " could be used.";
        words.add(Words.paragraph(taps + " " + summary()));
        TapSittings.objection(SittingOutline.of(matter.sitting()))
                .filter(why -> !result.resonances().isEmpty())
                .ifPresent(why -> words.add(Words.paragraph(
                        "This is not the instrument as it is played: " + why + ". Do not compare it with others.")));
        return new Section("In short", words);
    }

    private String summary() {
        if (named.isEmpty()) {
            return result.resonances().isEmpty()
                    ? "No resonance of the body could be told from the room's noise; the recording must be made again."
                    : "The body's resonances were found, but none could be named for certain.";
        }
        String text = "";
        for (ModeName mode : List.of(ModeName.MAIN_AIR, ModeName.MAIN_TOP)) {
            text += named.stream()
                    .filter(r -> r.mode().equals(Optional.of(mode)))
                    .findFirst()
                    .map(r -> "Its " + mode.words() + " resonance lies at "
                            + hz(r.found().resonance()) + ", "
                            + nearest(r.found().resonance().frequencyHz().value()) + ". ")
                    .orElse("Which resonance is its " + mode.words() + " cannot be told from these taps. ");
        }
        return text
                + "The ± says where the true figure lies, 19 times in 20, taking the guitar away and setting it up again"
                + " included (" + matter.spread().frequency().basis().words() + ").";
    }

    private String hz(Resonance r) {
        return Sure.text(matter.another(Quantity.FREQUENCY, r.frequencyHz()), 1) + " Hz";
    }

    /** A resonance is no note; the note only says where on the fingerboard to listen. */
    private static String nearest(double hz) {
        NoteName note = NoteName.nearest(hz, A4_HZ);
        long cents = Math.round(note.centsTo(hz, A4_HZ));
        String off = cents == 0
                ? "on the note " + note
                : Math.abs(cents) + " cents " + (cents > 0 ? "above" : "below") + " the note " + note;
        return off + " (" + Figures.text(note.hz(A4_HZ), 1) + " Hz)";
    }

    private Optional<Section> curve() {
        return result.curve().map(curve -> {
            CurvePicture picture = new CurvePicture("");
            picture.add("", result, CurvePicture.namedMarks(matter.sitting()));
            return Section.of(
                    "How the body answers",
                    matter.pictures()
                            .figure(
                                    picture.onPage().orElseThrow(),
                                    "Curve of the body's answer to taps over frequency, with "
                                            + Figures.count(named.size(), "named resonance"),
                                    "How strongly the body answers a tap at each frequency, low notes to the left. 0 dB is its strongest"
                                            + " answer; 20 dB less is a tenth of the sound pressure. A clear peak is a resonance, or several close together. Shaded:"
                                            + " where the mean curve lies 19 times in 20, from these taps alone."));
        });
    }

    private Section table() {
        Grid grid =
                Grid.of("resonance|", "what moves|", "frequency (Hz)", "nearest note|", "rings for (s)", "level (dB)");
        for (ShownResonance shown : named) {
            Resonance r = shown.found().resonance();
            grid.add(
                    shown.name().orElse(""),
                    shown.mode().map(ClientTaps::whatMoves).orElse("named by the maker"),
                    sure(Quantity.FREQUENCY, r.frequencyHz(), 1),
                    NoteName.nearest(r.frequencyHz().value(), A4_HZ).toString(),
                    sure(Quantity.DECAY_TIME, r.decayTimeSeconds(), 2),
                    r.isReference() ? InWords.ZERO_LEVEL : sure(Quantity.LEVEL, r.levelDb(), 0));
        }
        return Section.of(
                "The named resonances",
                grid.element(),
                Words.quiet(
                        "Rings for: until the sound is 60 dB weaker, a thousandth of its pressure. Level: against the strongest resonance of"
                                + " this guitar. All ± as above. Names are suggestions by where a resonance lies and how strong it is, unless the"
                                + " maker gave them."));
    }

    private String sure(Quantity quantity, Estimate found, int finest) {
        return Sure.text(matter.another(quantity, found), finest);
    }

    /** What the name means; nothing of what it does for the sound, because taps do not show that. */
    private static String whatMoves(ModeName mode) {
        return switch (mode) {
            case MAIN_AIR -> "air in the soundhole, as in a bottle one blows over, and the top with it";
            case MAIN_TOP -> "the lower part of the top, in and out as one";
            case MAIN_BACK -> "the back, in and out as one";
            case CROSS_DIPOLE -> "bass and treble half of the top, against each other";
            case LONG_DIPOLE -> "upper and lower part of the top, against each other";
        };
    }
}
