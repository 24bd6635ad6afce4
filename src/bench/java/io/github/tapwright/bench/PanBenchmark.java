package io.github.tapwright.bench;

import io.github.tapwright.chart.CurveWindow;
import io.github.tapwright.chart.Light;
import io.github.tapwright.chart.Trace;
import io.github.tapwright.desktop.plot.CurvePane;
import io.github.tapwright.tap.ResponseCurve;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import javafx.application.Platform;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long one frame takes while a reader pans over 20 curves of 8,192 points in a real window, until the next frame is laid
 * out; 30 frames a second leave 33 ms. Needs a screen, such as that of {@code xvfb-run}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Dprism.order=sw", "-Djavafx.animation.fullspeed=true", "-Xmx320m"})
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 5, time = 2)
public class PanBenchmark {

    private static final int CURVES = 20;
    private static final int POINTS = 8192;
    private static final double WIDTH = 1140;
    private static final double HEIGHT = 640;

    private Optional<CurvePane> opened = Optional.empty();
    private CountDownLatch watched = new CountDownLatch(1);
    private int step;

    /** Opens a window with the curves. */
    @Setup(Level.Trial)
    public void open() throws InterruptedException {
        CountDownLatch shown = new CountDownLatch(1);
        Platform.startup(() -> {
            CurvePane pane = new CurvePane(new SimpleObjectProperty<>(Light.DAY), new SimpleDoubleProperty(440));
            Stage stage = new Stage();
            stage.setScene(new Scene(pane, WIDTH, HEIGHT));
            stage.show();
            stage.getScene().addPostLayoutPulseListener(() -> watched.countDown());
            pane.show(IntStream.range(0, CURVES)
                    .mapToObj(i -> new Trace("curve " + i, curve(i), List.of()))
                    .toList());
            opened = Optional.of(pane);
            shown.countDown();
        });
        shown.await();
    }

    /** Three resonances whose places differ from curve to curve. */
    private static ResponseCurve curve(int number) {
        List<ResponseCurve.Point> points = IntStream.range(0, POINTS)
                .mapToObj(i -> 60 + 940.0 * i / POINTS)
                .map(hz -> {
                    double level =
                            10 * Math.log10(peak(hz, 100 + number) + peak(hz, 190 + 2 * number) + peak(hz, 380)) - 3;
                    return new ResponseCurve.Point(hz, level, level - 0.5, level + 0.5);
                })
                .toList();
        return new ResponseCurve(points, 1, 8);
    }

    private static double peak(double hz, double at) {
        double off = 25 * (hz / at - at / hz);
        return 1 / (1 + off * off);
    }

    /** One step of the hand. */
    @Benchmark
    public void frame() throws InterruptedException {
        CountDownLatch laidOut = new CountDownLatch(1);
        Platform.runLater(() -> {
            CurvePane pane = opened.orElseThrow();
            CurveWindow window = pane.window();
            pane.move(window.slid(step++ / 50 % 2 == 0 ? 0.01 : -0.01, 0));
            watched = laidOut;
            Platform.requestNextPulse();
        });
        laidOut.await();
    }

    /** Closes the window. */
    @TearDown(Level.Trial)
    public void close() {
        Platform.exit();
    }
}
