package io.github.tapwright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.microphone.VirtualMicrophone;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.synthesis.TapScene;
import io.github.tapwright.synthesis.TrueMode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The whole program in a real window, with a real microphone, by mouse and keyboard. */
class DeskTest {

    private static final Path PICTURES = Path.of("target", "screenshots").toAbsolutePath();
    private static final int RATE_HZ = 48_000;

    @Test
    @Timeout(value = 240, unit = TimeUnit.SECONDS)
    void aFirstVisitGoesFromAnEmptyShelfToAPrintedComparison(@TempDir Path folder) throws Exception {
        VirtualScreen.require("xdotool", "xdotool");
        Path report = folder.resolve("report.pdf");
        Path sound = Files.createDirectory(folder.resolve("sound"));
        try (VirtualScreen screen = VirtualScreen.start(1280, 720);
                VirtualMicrophone microphone = VirtualMicrophone.start(sound, RATE_HZ)) {
            Process desk = microphone.java(
                    screen.environment(),
                    List.of("-Dprism.order=sw", "-Xmx512m"),
                    DeskVisit.class,
                    folder.resolve("archive").toString(),
                    PICTURES.toString(),
                    report.toString());
            List<String> said = follow(desk, microphone, taps(folder));
            assertThat(desk.waitFor()).as(String.join("\n", said)).isZero();
            assertThat(said).contains("DONE");
        }
        try (PDDocument pdf = Loader.loadPDF(report.toFile())) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("41").containsIgnoringCase("cannot tell");
        }
    }

    @ParameterizedTest
    @CsvSource({"1280,720", "1920,1080"})
    @Timeout(value = 150, unit = TimeUnit.SECONDS)
    void everyScreenShowsItselfInLightAndDarkWithoutAFault(int width, int height, @TempDir Path folder)
            throws Exception {
        try (TestDesk desk = new TestDesk(folder)) {
            ShopNumber number = desk.instrument("51");
            desk.sitting(number, 102, 196, Conditions.UNKNOWN);
            desk.sitting(number, 101, 194, Conditions.UNKNOWN);
        }
        try (NotesDesk notes = NotesDesk.in(folder)) {
            notes.addRun();
        }
        Path sound = Files.createDirectory(folder.resolve("sound"));
        try (VirtualScreen screen = VirtualScreen.start(width, height);
                VirtualMicrophone microphone = VirtualMicrophone.start(sound, RATE_HZ)) {
            Process desk = microphone.java(
                    screen.environment(),
                    List.of("-Dprism.order=sw", "-Xmx512m"),
                    DeskPictures.class,
                    folder.resolve("archive").toString(),
                    PICTURES.toString(),
                    Integer.toString(width),
                    Integer.toString(height));
            List<String> said = follow(desk, microphone, folder);
            assertThat(desk.waitFor()).as(String.join("\n", said)).isZero();
        }
        try (Stream<Path> pictures = Files.list(PICTURES)) {
            assertThat(pictures.filter(p -> p.toString().contains(width + "x" + height)))
                    .hasSizeGreaterThanOrEqualTo(2 * 7);
        }
    }

    @Test
    @Timeout(value = 150, unit = TimeUnit.SECONDS)
    void studiesOfPlayingAgainAreMadeKeptAndTakenBackByKeyboard(@TempDir Path folder) throws Exception {
        try (TestDesk desk = new TestDesk(folder)) {
            ShopNumber number = desk.instrument("51");
            for (double again : new double[] {1, 1.04, 1.1}) {
                desk.sitting(number, 102 * again, 196, Conditions.UNKNOWN);
                desk.ringing(number, again);
                desk.plucks(number, "30 dB", again);
            }
        }
        requireDone(DeskStudy.class, folder);
    }

    @Test
    @Timeout(value = 150, unit = TimeUnit.SECONDS)
    void anInstrumentAndASittingAreCorrectedByKeyboard(@TempDir Path folder) throws Exception {
        try (TestDesk desk = new TestDesk(folder)) {
            desk.sitting(desk.instrument("51", ConstructionKind.SOLID), 102, 196, TestDesk.strung(HoleState.OPEN));
        }
        requireDone(DeskCorrection.class, folder);
        try (TestDesk desk = new TestDesk(folder)) {
            Instrument instrument = desk.listInstruments().list().get(0);
            assertThat(instrument.body().scaleLengthMm()).contains(650.0);
            assertThat(instrument.construction().outerSkin().material()).contains("spruce");
            assertThat(instrument.construction().kind()).as("not touched").contains(ConstructionKind.SOLID);
            Sitting sitting = desk.showSitting().show(new SittingId(1));
            assertThat(sitting.conditions().air()).isEqualTo(new Air(Optional.of(20.0), Optional.of(46.0)));
            assertThat(sitting.conditions().hole()).isEqualTo(HoleState.COVERED);
            assertThat(sitting.analyses()).hasSize(2);
            assertThat(desk.lookAtShelf().editSitting().corrected(sitting.id()))
                    .as("what was replaced: three corrections, one of them taken back")
                    .hasSize(4);
        }
    }

    @Test
    @Timeout(value = 150, unit = TimeUnit.SECONDS)
    void whatWasNotMeantIsPutRightByKeyboardAndTakenBack(@TempDir Path folder) throws Exception {
        try (TestDesk desk = new TestDesk(folder)) {
            ShopNumber number = desk.instrument("51");
            desk.sitting(number, 102, 196, TestDesk.strung(HoleState.OPEN));
            desk.sitting(number, 104, 199, TestDesk.strung(HoleState.OPEN));
            CalibrationId wrong = desk.calibration(114);
            desk.calibration(94);
            desk.plucks(desk.instrument("52"), "30 dB", 1, Optional.of(wrong));
        }
        requireDone(DeskPuttingRight.class, folder);
        try (TestDesk desk = new TestDesk(folder)) {
            Sitting sitting = desk.showSitting().show(new SittingId(2));
            assertThat(sitting.setAside())
                    .as("used again, which was taken back")
                    .isPresent();
            assertThat(sitting.instrument()).as("moved, and taken back").isEqualTo(new ShopNumber("51"));
            assertThat(desk.showSitting().show(new SittingId(3)).analyses())
                    .as("by calibration 1, by 2, by 1, and by 2 again, which is what undo came to")
                    .hasSize(4);
        }
    }

    /** Lets a script work on the archive in a folder, in a window of the least size. */
    private static void requireDone(Class<?> script, Path folder) throws Exception {
        Path sound = Files.createDirectory(folder.resolve("sound"));
        try (VirtualScreen screen = VirtualScreen.start(1280, 720);
                VirtualMicrophone microphone = VirtualMicrophone.start(sound, RATE_HZ)) {
            Process desk = microphone.java(
                    screen.environment(),
                    List.of("-Dprism.order=sw", "-Xmx512m"),
                    script,
                    folder.resolve("archive").toString(),
                    PICTURES.toString());
            List<String> said = follow(desk, microphone, folder);
            assertThat(desk.waitFor()).as(String.join("\n", said)).isZero();
            assertThat(said).contains("DONE");
        }
    }

    private static Path taps(Path folder) throws IOException {
        Path file = folder.resolve("taps.wav");
        TapScene scene = TapScene.of(TrueMode.resonator(102, 22, 0.5), TrueMode.resonator(196, 30, 1))
                .strikes(7, 1.3)
                .firstAt(1.5);
        WavWriter.write(file, scene.build().recording(), WavSamples.INT_24);
        return file;
    }

    private static List<String> follow(Process desk, VirtualMicrophone microphone, Path taps) throws IOException {
        List<String> said = new ArrayList<>();
        try (BufferedReader reader =
                new BufferedReader(new InputStreamReader(desk.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                said.add(line);
                if (line.equals("PLAY")) {
                    microphone.play(taps);
                }
            }
        }
        return said;
    }
}
