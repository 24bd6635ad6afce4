package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.exchange.BenchStudyJson;
import io.github.tapwright.sitting.SittingId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Studies how far setting up again moves figures on this bench. */
@Command(
        name = "repeatability",
        description =
                "Says how far setting up again moves figures on this bench; without sittings, shows the study kept.",
        footer = {
            "",
            "One instrument, one day, five set-ups: take it down, walk away, put it up again with support, microphone and",
            "strike place found anew, and tap six to ten times. Each set-up is a sitting; give their numbers here."
        })
final class RepeatabilityCommand extends ArchiveCommand {

    private static final String FORGET = "--forget";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "0..*",
            paramLabel = "SITTING",
            converter = SittingIdConverter.class,
            description = "Numbers of the sittings, one for each set-up.")
    private List<SittingId> sittings = List.of();

    @Option(names = "--keep", description = "Keep the study; comparisons then rest on it.")
    private boolean keep;

    @Option(names = FORGET, description = "Forget the study kept; no sitting is deleted.")
    private boolean forget;

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Mixin
    private TableOption csv = new TableOption();

    RepeatabilityCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        if (forget) {
            return forget(open.studyBench());
        }
        csv.refuseUnlessTable();
        Given.refuse(
                keep && sittings.isEmpty(),
                "--keep keeps the study of the sittings given; give their numbers, or leave it out to see the study kept");
        Optional<BenchStudy> found = find(open.studyBench());
        if (found.isEmpty()) {
            terminal()
                    .note("no study is kept; make five sittings of one instrument, set up anew for each, and give their"
                            + " numbers with --keep");
            return ExitCode.NOTHING_USABLE;
        }
        BenchStudy study = found.get();
        if (json) {
            terminal().print(BenchStudyJson.of(study));
        } else {
            new RepeatabilityText(terminal()).print(study);
        }
        csv.write(() -> BenchStudyJson.csv(study), terminal());
        if (keep) {
            terminal().note("kept; comparisons rest on this study from now on");
        }
        return study.spread().isPresent() ? ExitCode.DONE : ExitCode.NOTHING_USABLE;
    }

    private int forget(StudyBench studies) {
        Given.onlyBeside(spec, FORGET, Set.of());
        studies.forget();
        terminal()
                .say(
                        "Forgotten; no sitting was deleted.%nComparisons take it again that setting up moves figures by %s,%n%s,"
                                + " until a study is kept.",
                        SetUpSpread.USUAL.words(), SetUpSpread.USUAL.basis().words());
        return ExitCode.DONE;
    }

    private Optional<BenchStudy> find(StudyBench studies) {
        if (sittings.isEmpty()) {
            return studies.latest();
        }
        return Optional.of(keep ? studies.keep(sittings) : studies.study(sittings));
    }
}
