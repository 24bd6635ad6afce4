package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.comparison.played.PlayingStudy;
import io.github.tapwright.exchange.BenchStudyJson;
import io.github.tapwright.exchange.PlayingStudyJson;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.SittingId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Studies how far setting up again, or playing again, moves figures on this bench. */
@Command(
        name = "repeatability",
        description =
                "Says how far setting up again, or playing again, moves figures on this bench; without sittings, shows the studies kept.",
        footer = {
            "",
            "One instrument, one day, five set-ups: take it down, walk away, put it up again with support, microphone and",
            "strike place found anew, and tap six to ten times. Each set-up is a sitting; give their numbers here.",
            "",
            "Comparisons of notes rest on a study of notes, of plucks on one of plucks:",
            "play the same frets, or pluck the open strings, anew for each of five sittings."
        })
final class RepeatabilityCommand extends ArchiveCommand {

    private static final String FORGET = "--forget";
    private static final String EVERY = "all";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "0..*",
            paramLabel = "SITTING",
            converter = SittingIdConverter.class,
            description = "Numbers of the sittings, one for each set-up.")
    private List<SittingId> sittings = List.of();

    @Option(names = "--keep", description = "Keep the study; comparisons of its kind then rest on it.")
    private boolean keep;

    @Option(
            names = FORGET,
            arity = "0..1",
            paramLabel = "KIND",
            fallbackValue = EVERY,
            description = "Forget the study of taps, notes or plucks, or of ${FALLBACK-VALUE}; no sitting is deleted.")
    private String forget = "";

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Mixin
    private TableOption csv = new TableOption();

    RepeatabilityCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        if (!forget.isEmpty()) {
            return forget(open.studyBench());
        }
        csv.refuseUnlessTable();
        Given.refuse(
                keep && sittings.isEmpty(),
                "--keep keeps the study of the sittings given; give their numbers, or leave it out to see the study kept");
        if (sittings.isEmpty()) {
            return show(KeptStudies.in(open));
        }
        return open.studyPlaying().takes(sittings.get(0)) ? studyPlaying(open) : studyTaps(open);
    }

    private int studyTaps(OpenBench open) {
        BenchStudy study =
                keep ? open.studyBench().keep(sittings) : open.studyBench().study(sittings);
        if (json) {
            terminal().print(BenchStudyJson.of(study));
        } else {
            new RepeatabilityText(terminal()).print(study);
        }
        csv.write(() -> BenchStudyJson.csv(study), terminal());
        return ended(Procedure.BodyTaps.KEY, study.spread().isPresent());
    }

    private int studyPlaying(OpenBench open) {
        PlayingStudy study =
                keep ? open.studyPlaying().keep(sittings) : open.studyPlaying().study(sittings);
        if (json) {
            terminal().print(PlayingStudyJson.of(study));
        } else {
            new PlayingStudyText(terminal()).print(study);
        }
        csv.write(() -> PlayingStudyJson.csv(study), terminal());
        return ended(study.procedure(), study.spread().isPresent());
    }

    private int ended(String kind, boolean tells) {
        if (keep) {
            terminal().note("kept; comparisons of " + kind + " rest on this study from now on");
        }
        return tells ? ExitCode.DONE : ExitCode.NOTHING_USABLE;
    }

    private int show(KeptStudies kept) {
        kept.lapsed()
                .forEach(
                        l -> terminal().note("the study of " + l.procedure() + " kept no longer holds: " + l.reason()));
        if (kept.isEmpty() && kept.lapsed().isEmpty()) {
            terminal()
                    .note(
                            "no study is kept; make five sittings of one instrument, set up (or played) anew for each, and give"
                                    + " their numbers with --keep");
        }
        if (json) {
            terminal().print(BenchStudyJson.kept(kept.taps(), kept.played(), kept.lapsed()));
        } else {
            print(kept);
        }
        if (kept.isEmpty()) {
            return ExitCode.NOTHING_USABLE;
        }
        writeTable(kept);
        return ExitCode.DONE;
    }

    /** That of the first study shown. */
    private void writeTable(KeptStudies kept) {
        if (kept.count() > 1 && csv.isAsked()) {
            terminal().note("the table holds the first of these studies; give the sittings of another for its own");
        }
        csv.write(
                () -> kept.taps()
                        .map(BenchStudyJson::csv)
                        .orElseGet(() -> PlayingStudyJson.csv(kept.played().get(0))),
                terminal());
    }

    private void print(KeptStudies kept) {
        kept.taps().ifPresent(new RepeatabilityText(terminal())::print);
        for (int i = 0; i < kept.played().size(); i++) {
            if (i > 0 || kept.taps().isPresent()) {
                terminal().say("");
            }
            new PlayingStudyText(terminal()).print(kept.played().get(i));
        }
    }

    private int forget(StudyBench studies) {
        Given.onlyBeside(spec, FORGET, Set.of());
        Given.refuse(
                !forget.equals(EVERY) && !StudyBench.KINDS.contains(forget),
                FORGET + " takes " + String.join(", ", StudyBench.KINDS) + " or " + EVERY + ", not " + forget);
        Map<String, List<SittingId>> forgotten =
                studies.forget(forget.equals(EVERY) ? StudyBench.KINDS : List.of(forget));
        forgotten.forEach(this::sayForgotten);
        terminal()
                .say(
                        "No sitting was deleted. Comparisons of these take it again that setting up, or playing, moves figures by%n%s,%n%s,"
                                + " until a study is kept.",
                        SetUpSpread.USUAL.words(), SetUpSpread.USUAL.basisWords());
        return ExitCode.DONE;
    }

    private void sayForgotten(String kind, List<SittingId> rested) {
        String numbers = rested.stream().map(SittingId::toString).collect(Collectors.joining(" "));
        terminal().say("Forgotten: the study of %s; repeatability %s --keep would keep it again.", kind, numbers);
    }
}
