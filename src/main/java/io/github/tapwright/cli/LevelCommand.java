package io.github.tapwright.cli;

import io.github.tapwright.exchange.LevelJson;
import io.github.tapwright.level.FullScale;
import io.github.tapwright.level.LevelReference;
import io.github.tapwright.level.LevelSettings;
import io.github.tapwright.level.loudness.SoundField;
import io.github.tapwright.sitting.AppliedCalibration;
import io.github.tapwright.sitting.MeasuredLevels;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Measures levels and loudness of recordings. */
@Command(
        name = "level",
        description = "Measures levels and loudness; relative to full scale unless calibrated. Nothing is kept.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class LevelCommand implements Callable<Integer> {

    private final Bench bench;
    private final Terminal terminal;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Sound files.")
    private List<Path> files = List.of();

    @ArgGroup
    private CalibrationChoice calibration = new CalibrationChoice();

    @Option(
            names = "--field",
            paramLabel = "free|diffuse",
            description = "How the sound reached the microphone, for loudness in sone; free unless told otherwise.")
    private Optional<SoundField> field = Optional.empty();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Option(names = "--plot", paramLabel = "OUT", description = "Write the third-octave spectrum as .png or .svg.")
    private Optional<Path> plot = Optional.empty();

    @Mixin
    private ArchiveOption archive = new ArchiveOption();

    LevelCommand(Bench bench, Terminal terminal) {
        this.bench = bench;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        plot.ifPresent(PictureOption::check);
        if (plot.isPresent()) {
            SpectrumPicture.refuseTooMany(files.size());
        }
        Given.refuse(
                field.isPresent() && !calibration.isGiven(),
                "--field is for loudness in sone, which needs --calibration or --calibrated-by; give one, or leave it"
                        + " out");
        Optional<AppliedCalibration> applied = calibration.find(bench, archive.folder(), terminal);
        LevelReference reference =
                applied.<LevelReference>map(AppliedCalibration::calibration).orElseGet(FullScale::new);
        List<MeasuredLevels> measured = bench.measureLevels()
                .measure(files, new LevelSettings(reference, field.orElse(SoundField.FREE)), terminal.progress());
        if (json) {
            terminal.print(LevelJson.each(measured, applied));
        } else {
            print(measured, applied);
        }
        if (plot.isPresent()) {
            draw(measured, applied, plot.get());
        }
        return exitCode(measured);
    }

    private void print(List<MeasuredLevels> measured, Optional<AppliedCalibration> applied) {
        applied.ifPresent(c -> new CalibrationText(terminal, bench.clock().getZone()).print(c));
        measured.forEach(m -> new LevelText(terminal).print(m));
    }

    private void draw(List<MeasuredLevels> measured, Optional<AppliedCalibration> applied, Path file) {
        SpectrumPicture picture = new SpectrumPicture(measured, applied);
        boolean written = Output.tryTo(file, () -> picture.write(file));
        terminal.note(written ? "wrote " + file : "no picture written, because there is no sound to draw");
    }

    private int exitCode(List<MeasuredLevels> measured) {
        if (measured.stream().anyMatch(MeasuredLevels::audible)) {
            return ExitCode.DONE;
        }
        terminal.note("nothing usable was found in " + (files.size() == 1 ? files.get(0) : "these files"));
        return ExitCode.NOTHING_USABLE;
    }
}
