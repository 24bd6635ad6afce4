package io.github.tapwright.report;

import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/** Plucks made up for reports: ten of each of six strings. */
final class InventedPlucks {

    private InventedPlucks() {}

    static Findings louder(double db, Random chance) {
        List<Pluck> plucks = IntStream.range(0, 60)
                .mapToObj(i -> new Pluck(
                        0,
                        2.0 * i,
                        Optional.of(1 + i / 10),
                        Optional.of(-30 + db + 0.3 * chance.nextGaussian()),
                        Optional.of(-28 + db + 0.3 * chance.nextGaussian()),
                        Optional.empty(),
                        List.of()))
                .toList();
        return new Findings.OfPlucks(new PluckRun(plucks, Tuning.CLASSICAL, Optional.empty(), "plucks-test"));
    }
}
