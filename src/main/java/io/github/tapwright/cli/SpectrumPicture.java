package io.github.tapwright.cli;

import io.github.tapwright.chart.BandSpectrum;
import io.github.tapwright.chart.ChartFile;
import io.github.tapwright.chart.LevelPicture;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.level.ChannelLevels;
import io.github.tapwright.sitting.AppliedCalibration;
import io.github.tapwright.sitting.CalibratedInput;
import io.github.tapwright.sitting.MeasuredLevels;
import io.github.tapwright.statistics.Figures;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A picture of third-octave spectra: every channel of one recording, or the main channels of several. */
final class SpectrumPicture {

    private final List<MeasuredLevels> measured;
    private final Optional<AppliedCalibration> calibration;

    SpectrumPicture(List<MeasuredLevels> measured, Optional<AppliedCalibration> calibration) {
        this.measured = measured;
        this.calibration = calibration;
    }

    /** Says so before the work is done, if the bars would become too many to tell apart. */
    static void refuseTooMany(int files) {
        if (files > LevelPicture.MOST_SPECTRA) {
            throw new RefusedEntryException("a picture shows " + LevelPicture.MOST_SPECTRA
                    + " recordings at most; give fewer files with --plot");
        }
    }

    /**
     * Writes the picture.
     *
     * @return false if there is no sound to draw, and then no file is written
     */
    boolean write(Path file) throws IOException {
        List<BandSpectrum> spectra = spectra();
        if (spectra.isEmpty()) {
            return false;
        }
        ChartFile.write(
                new LevelPicture(
                        "Third-octave levels ("
                                + measured.get(0)
                                        .report()
                                        .settings()
                                        .reference()
                                        .unit() + ")",
                        subtitles(),
                        measured.get(0).report().settings().reference(),
                        spectra),
                file);
        return true;
    }

    private List<BandSpectrum> spectra() {
        List<ChannelLevels> channels = measured.get(0).report().channels();
        boolean eachChannel =
                measured.size() == 1 && channels.size() > 1 && channels.size() <= LevelPicture.MOST_SPECTRA;
        List<BandSpectrum> all = eachChannel
                ? IntStream.range(0, channels.size())
                        .mapToObj(c -> new BandSpectrum(
                                "channel " + (c + 1), channels.get(c).thirdOctaves()))
                        .toList()
                : measured.stream()
                        .map(m -> new BandSpectrum(m.file(), m.mainChannel().thirdOctaves()))
                        .toList();
        return all.stream().filter(s -> !s.bands().isEmpty()).toList();
    }

    private List<String> subtitles() {
        List<String> lines = new ArrayList<>();
        measured.forEach(m -> lines.add(summary(m)));
        calibration.ifPresent(c -> lines.add("calibrated by "
                + c.id().map(id -> "calibration " + id + ", ").orElse("") + c.toneFile()
                + "; holds for one input alone: "
                + words(c.input())));
        return lines;
    }

    private static String summary(MeasuredLevels measured) {
        String channel = measured.facts().channelCount() == 1
                ? ""
                : ", loudest of " + measured.facts().channelCount() + " channels is number "
                        + (measured.facts().channelUsed() + 1);
        return measured.file() + ": "
                + measured.mainChannel()
                        .soundLevels()
                        .map(s -> "LAeq " + Figures.text(s.laeq().levelDb(), 1) + " "
                                + s.laeq().reference().unit() + " over " + Figures.text(s.durationSeconds(), 1) + " s")
                        .orElse("no sound")
                + channel;
    }

    private static String words(CalibratedInput input) {
        return "microphone " + input.microphone().orElse("unknown") + ", gain "
                + input.gain().orElse("unknown");
    }
}
