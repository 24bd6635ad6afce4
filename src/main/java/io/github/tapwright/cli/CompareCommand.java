package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.comparison.group.GroupBy;
import io.github.tapwright.comparison.group.GroupSettings;
import io.github.tapwright.comparison.group.GroupStudy;
import io.github.tapwright.comparison.played.ComparePlayed;
import io.github.tapwright.exchange.ComparisonJson;
import io.github.tapwright.exchange.GroupStudyJson;
import io.github.tapwright.exchange.PlayedJson;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.report.picture.PlayedMaps;
import io.github.tapwright.sitting.SittingId;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Compares two sittings, or groups of instruments. */
@Command(
        name = "compare",
        description = "Compares two sittings, the latest sittings of two instruments, or groups of instruments.",
        footer = {
            "",
            "Setting up again moves every figure a little. Measure how far on your bench, with five sittings",
            "of one instrument on one day, and give it with --spread.",
            "",
            "Two sittings of notes are compared place by place, two of plucks string by string.",
            "",
            "With --group, leave A and B out: every construction in the archive is compared with every other, each",
            "instrument being the mean over its sittings. --stage goes with it, --spread, --despite and --shop-window",
            "do not."
        })
final class CompareCommand extends ArchiveCommand {

    @Parameters(arity = "0..2", paramLabel = "A B", description = "Numbers of two sittings, or two shop numbers.")
    private List<String> two = List.of();

    @Option(
            names = "--group",
            paramLabel = "BY",
            converter = KeyConverters.Grouping.class,
            description = "Compare groups of instruments by construction or kind.")
    private Optional<GroupBy> group = Optional.empty();

    @Option(
            names = "--stage",
            paramLabel = "CLASS",
            converter = KeyConverters.Strung.class,
            description = "Groups: sittings strung or unstrung; strung if left out.")
    private Optional<StageClass> stage = Optional.empty();

    @Option(names = "--instruments", description = "A and B are shop numbers; their latest sittings are compared.")
    private boolean instruments;

    @Option(
            names = "--spread",
            paramLabel = "%F:%Q:DB",
            converter = SpreadConverter.class,
            description =
                    "Spread of setting up: frequency in %%, Q in %%, level in dB; the study kept by repeatability, else 0.3:5:1, if left out.")
    private Optional<SetUpSpread> spread = Optional.empty();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Mixin
    private TableOption csv = new TableOption();

    @Option(
            names = "--plot",
            paramLabel = "OUT",
            description = "Write the response curves, or maps of notes, as .png or .svg.")
    private Optional<Path> plot = Optional.empty();

    @Option(
            names = "--despite",
            paramLabel = "REASON",
            description = "Show refused figures too; the reason stays on the result.")
    private Optional<String> despite = Optional.empty();

    @Option(
            names = "--shop-window",
            paramLabel = "LO:HI",
            converter = WindowConverter.class,
            description = "Relative humidity the shop keeps, %%; 40:50 if left out.")
    private Optional<ShopWindow> window = Optional.empty();

    CompareCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        plot.ifPresent(PictureOption::check);
        csv.refuseUnlessTable();
        return group.isPresent() ? compareGroups(open, group.get()) : compareTwo(open);
    }

    private int compareGroups(OpenBench open, GroupBy by) {
        Given.refuse(
                !two.isEmpty() || instruments || spread.isPresent() || despite.isPresent() || window.isPresent(),
                "--group takes no sittings, --instruments, --spread, --despite or --shop-window; leave them out");
        GroupStudy study = open.compareGroups().compare(new GroupSettings(by, stage.orElse(StageClass.STRUNG)));
        GroupText text = new GroupText(terminal());
        if (json) {
            terminal().print(GroupStudyJson.of(study));
        } else {
            text.print(study);
        }
        csv.write(() -> GroupStudyJson.csv(study), terminal());
        if (plot.isPresent()) {
            text.draw(study, plot.get());
        }
        return study.differences().isEmpty() ? ExitCode.NOTHING_USABLE : ExitCode.DONE;
    }

    private int compareTwo(OpenBench open) {
        if (two.size() != 2 || stage.isPresent()) {
            throw new RefusedEntryException(
                    two.size() != 2
                            ? "give the numbers of two sittings, or --group construction to compare groups"
                            : "--stage goes with --group; leave it out");
        }
        CompareSittings compare = open.compareSittings();
        if (!instruments) {
            two.forEach(text -> refuseShopNumber(open, text));
        }
        List<LeftOut> passedOver = passedOver(compare);
        SittingId a = sitting(compare, two.get(0));
        SittingId b = sitting(compare, two.get(1));
        CompareSittings.Settings settings =
                new CompareSittings.Settings(spread, window.orElse(ShopWindow.USUAL), despite);
        return open.comparePlayed().takes(a)
                ? showPlayed(open.comparePlayed().compare(a, b, settings), passedOver)
                : showTaps(compare.compare(a, b, settings), passedOver);
    }

    private int showPlayed(ComparePlayed.Compared compared, List<LeftOut> passedOver) {
        if (json) {
            terminal().print(PlayedJson.of(compared, passedOver));
        } else {
            passedOver.forEach(this::say);
            new PlayedText(terminal(), bench().clock().getZone()).print(compared);
        }
        csv.write(() -> PlayedJson.csv(compared), terminal());
        if (plot.isPresent()) {
            new PictureOption.Drawn(PlayedMaps.of(compared.comparison()))
                    .write(plot.get(), terminal(), "no note was played at the same place in both");
        }
        return compared.comparison().questions() == 0 ? ExitCode.NOTHING_USABLE : ExitCode.DONE;
    }

    private int showTaps(CompareSittings.Compared compared, List<LeftOut> passedOver) {
        ComparisonText text = new ComparisonText(terminal(), bench().clock().getZone());
        if (json) {
            terminal().print(ComparisonJson.of(compared, passedOver));
        } else {
            passedOver.forEach(this::say);
            text.print(compared);
        }
        csv.write(() -> ComparisonJson.csv(compared), terminal());
        if (plot.isPresent()) {
            text.draw(compared, plot.get());
        }
        return compared.comparison().changes().isEmpty() ? ExitCode.NOTHING_USABLE : ExitCode.DONE;
    }

    /** Whoever types the numbers on two labels is told how to compare those. */
    private void refuseShopNumber(OpenBench open, String text) {
        boolean isSitting = isNumber(text) && open.showSitting().knows(new SittingIdConverter().convert(text));
        boolean isOnShelf = open.listInstruments().shopNumbers().stream()
                .anyMatch(n -> n.text().equals(text));
        Given.refuse(
                isOnShelf && !isSitting,
                "there is no sitting " + text + ", but an instrument with that shop number; compare --instruments "
                        + String.join(" ", two) + " compares the latest sittings of two instruments");
    }

    private static boolean isNumber(String text) {
        return text.matches("[1-9][0-9]{0,17}");
    }

    private SittingId sitting(CompareSittings compare, String text) {
        return instruments ? compare.latest(new ShopNumber(text)) : new SittingIdConverter().convert(text);
    }

    /** Later sittings set aside, where the latest of an instrument is asked for. */
    private List<LeftOut> passedOver(CompareSittings compare) {
        return instruments
                ? two.stream()
                        .flatMap(text -> compare.passedOver(new ShopNumber(text)).stream())
                        .toList()
                : List.of();
    }

    private void say(LeftOut passedOver) {
        terminal()
                .say(
                        "Sitting %s of instrument %s left out, %s",
                        passedOver.sitting(), passedOver.instrument(), passedOver.reason());
    }
}
