package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.report.EditShop;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Changes what stands at the head of reports. */
@Command(
        name = "edit",
        description = "Changes what your workshop says of itself on its reports; what is not said stays as it was.")
final class ShopEditCommand extends ArchiveCommand {

    @Option(names = "--name", paramLabel = "NAME", description = "Its name; an empty text means none.")
    private Optional<String> name = Optional.empty();

    @Option(
            names = "--address",
            paramLabel = "LINE",
            description = "A line of its address; give the option once for each line, all lines anew.")
    private List<String> address = List.of();

    @Option(names = "--picture", paramLabel = "FILE", description = "Its picture, PNG, JPEG or SVG, 2 MB at most.")
    private Optional<Path> picture = Optional.empty();

    @Option(names = "--no-picture", description = "Reports go without a picture from now on.")
    private boolean withoutPicture;

    ShopEditCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    boolean mayMakeTheArchive() {
        return true;
    }

    @Override
    int run(OpenBench open) {
        if (picture.isPresent() && withoutPicture) {
            throw new RefusedEntryException("--picture and --no-picture go against each other; leave one out");
        }
        Optional<List<String>> lines = address.isEmpty() ? Optional.empty() : Optional.of(address);
        new ShopText(terminal()).print(open.editShop().edit(new EditShop.Change(name, lines, picture, withoutPicture)));
        return ExitCode.DONE;
    }
}
