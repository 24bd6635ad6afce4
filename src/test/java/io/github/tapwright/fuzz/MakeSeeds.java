package io.github.tapwright.fuzz;

import io.github.tapwright.archive.ArchiveSeeds;
import io.github.tapwright.audio.SoundSeeds;
import io.github.tapwright.cli.TypedSeeds;
import io.github.tapwright.exchange.ExchangeSeeds;
import io.github.tapwright.report.ReportSeeds;
import java.io.IOException;
import java.nio.file.Path;

/** Makes the seeds of all fuzz tests anew, from nothing but this project's own code and sounds. */
public final class MakeSeeds {

    private MakeSeeds() {}

    /** The folder of the test resources is the only argument. */
    public static void main(String[] arguments) throws IOException {
        Path resources = Path.of(arguments[0]);
        SoundSeeds.write(resources);
        ArchiveSeeds.write(resources);
        ExchangeSeeds.write(resources);
        ReportSeeds.write(resources);
        TypedSeeds.write(resources);
    }
}
