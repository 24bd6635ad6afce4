package io.github.tapwright.report;

import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.Difference;
import io.github.tapwright.comparison.InWords;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.ResonanceChange;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.SittingComparison;
import io.github.tapwright.comparison.TwoSittings;
import io.github.tapwright.report.picture.CurvePicture;
import io.github.tapwright.report.xhtml.Element;
import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.report.xhtml.Tag;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a report says of two sittings of taps: resonances found again, and both curves. */
final class ComparedTaps implements ComparedFindings {

    private final CompareSittings.Compared compared;
    private final SittingComparison comparison;

    ComparedTaps(CompareSittings.Compared compared) {
        this.compared = compared;
        this.comparison = compared.comparison();
    }

    @Override
    public TwoSittings two() {
        return compared;
    }

    @Override
    public SetUpSpread spread() {
        return compared.bench().spread();
    }

    @Override
    public List<Node> inBrief() {
        List<Node> content = new ArrayList<>(named(ComparedTaps::brief));
        content.add(Words.quiet(
                "B against A, in A's air as far as the air is known. In brackets: where the true difference lies, 19 times in"
                        + " 20, setting up again included ("
                        + compared.bench().spread().basisWords()
                        + "). What listeners notice is known from published tests with other sounds."));
        return content;
    }

    @Override
    public List<Node> inFull() {
        List<Node> content = new ArrayList<>(named(this::words));
        content.add(table(comparison.changes()));
        content.add(Words.quiet("B minus A in A's air, ± half the 95 % interval, setting up again included ("
                + compared.bench().spread().basisWords() + "): one in twenty lies outside by chance alone. "
                + InWords.asked(comparison) + "; \"perhaps\" marks what does not stand"
                + " all of them considered."));
        alone("A", comparison.onlyFirst(), content);
        alone("B", comparison.onlySecond(), content);
        return content;
    }

    private List<Node> named(Function<ResonanceChange, List<String>> words) {
        List<ResonanceChange> named =
                comparison.changes().stream().filter(c -> c.name().isPresent()).toList();
        return named.isEmpty()
                ? List.of(Words.paragraph("No named resonance of A could be found again in B."))
                : List.of(
                        Element.of(Tag.H3, "In words"),
                        Words.list(named.stream()
                                .flatMap(c -> words.apply(c).stream())
                                .toList()));
    }

    @Override
    public Optional<Illustration> drawn(ReportKind kind) {
        boolean client = kind == ReportKind.CLIENT;
        CurvePicture picture = new CurvePicture("");
        add(picture, "B: sitting " + compared.second().id(), compared.second(), client);
        add(picture, "A: sitting " + compared.first().id(), compared.first(), client);
        return picture.onPage()
                .map(
                        p -> new Illustration(
                                p,
                                "Response curves of both sittings",
                                "Response to taps in both sittings, each against its own highest point, with 95 % intervals of the means."));
    }

    private static void add(CurvePicture picture, String label, Sitting sitting, boolean client) {
        sitting.latest()
                .taps()
                .ifPresent(r ->
                        picture.add(label, r, client ? CurvePicture.namedMarks(sitting) : CurvePicture.marks(sitting)));
    }

    /** Q and decay time are one thing seen twice; people hear decay. */
    private static List<String> brief(ResonanceChange change) {
        String name = change.name().orElse("");
        List<Difference> told = change.differences().stream()
                .filter(d -> d.quantity() != Quantity.Q)
                .toList();
        String differs = told.stream()
                .filter(d -> d.verdict() == Difference.Verdict.DIFFERS)
                .map(InWords::brief)
                .collect(Collectors.joining("; "));
        String rest = Stream.of(
                        said(
                                told,
                                Difference.Verdict.DIFFERS_ALONE,
                                "perhaps different, or chance among so many figures"),
                        said(told, Difference.Verdict.CANNOT_TELL, "no difference can be told"),
                        said(told, Difference.Verdict.REFUSED, "not compared, the conditions forbid it"))
                .flatMap(Optional::stream)
                .collect(Collectors.joining("; "));
        return List.of(name + " " + differs + (differs.isEmpty() || rest.isEmpty() ? "" : "; ") + rest);
    }

    private List<String> words(ResonanceChange change) {
        String name = change.name().orElse("");
        List<String> lines = new ArrayList<>();
        for (Difference d : change.differences()) {
            if (d.verdict() == Difference.Verdict.DIFFERS || d.verdict() == Difference.Verdict.DIFFERS_ALONE) {
                lines.add(InWords.sentence(name, d, compared.bench().spread()));
            }
        }
        said(change.differences(), Difference.Verdict.CANNOT_TELL, "no difference can be told")
                .map(line -> name + ", " + line)
                .ifPresent(lines::add);
        said(change.differences(), Difference.Verdict.REFUSED, "not compared, the conditions forbid it")
                .map(line -> name + ", " + line)
                .ifPresent(lines::add);
        return lines;
    }

    private static Optional<String> said(List<Difference> differences, Difference.Verdict verdict, String words) {
        String quantities = differences.stream()
                .filter(d -> d.verdict() == verdict)
                .map(d -> d.quantity().words())
                .collect(Collectors.joining(", "));
        return quantities.isEmpty() ? Optional.empty() : Optional.of(quantities + ": " + words);
    }

    private static Element table(List<ResonanceChange> changes) {
        Grid grid = Grid.of(
                "A (Hz)", "B (Hz)", "as measured", "frequency (Hz)", "Q", "decay time (s)", "level (dB)", "resonance|");
        changes.stream().map(InWords::row).forEach(grid::add);
        return grid.element();
    }

    private static void alone(String side, List<ShownResonance> alone, List<Node> content) {
        if (!alone.isEmpty()) {
            content.add(Words.quiet("In " + side + " alone: "
                    + alone.stream()
                            .map(r -> Figures.text(
                                            r.found().resonance().frequencyHz().value(), 2)
                                    + " Hz" + r.name().map(n -> " (" + n + ")").orElse(""))
                            .collect(Collectors.joining("; "))
                    + "."));
        }
    }
}
