package io.github.tapwright.demo;

import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.body.CoupledBody;
import io.github.tapwright.mode.body.Plate;
import java.io.IOException;
import java.nio.file.Path;

/** The body behind an open sitting of the demo, without the chance of its set-up; and the same with a mass on its bridge. */
public final class TrueBody {

    private final DemoSitting sitting;

    private TrueBody(DemoSitting sitting) {
        this.sitting = sitting;
    }

    /** Of an instrument's sitting with the hole open on a day. */
    public static TrueBody of(String shopNumber, String day) {
        return new TrueBody(DemoWorkshop.sittings().stream()
                .filter(s -> s.instrument().shopNumber().equals(shopNumber)
                        && s.taken().startsWith(day)
                        && s.hole() == HoleState.OPEN)
                .findFirst()
                .orElseThrow());
    }

    /** What every figure is held against. */
    public CoupledBody body() {
        return BodySound.nominalBody(sitting);
    }

    /** Temperature of the room. */
    public double celsius() {
        return sitting.room().temperatureC();
    }

    /** Humidity of the room. */
    public double percent() {
        return sitting.room().relativeHumidityPercent();
    }

    /** Taps on the same body with a mass on its bridge, set up anew. */
    public Path loaded(double grams, Path file) throws IOException {
        DemoInstrument i = sitting.instrument();
        Plate top = i.top();
        // The stage's factor multiplies the mass; what is stuck on weighs what it weighs.
        double mass = top.massKilograms() + grams / 1000 / sitting.stage().massFactor;
        Plate heavier = new Plate(
                mass, top.areaSquareMetres(), top.frequencyHz() * Math.sqrt(top.massKilograms() / mass), top.q());
        DemoInstrument loaded = new DemoInstrument(
                i.shopNumber(),
                i.construction(),
                i.layers(),
                i.bracing(),
                i.volumeCubicMetres(),
                i.hole(),
                heavier,
                i.back());
        DemoSitting again =
                DemoSitting.at(100 + sitting.number(), loaded, sitting.taken(), sitting.stage(), sitting.room());
        WavWriter.write(file, DemoRecording.of(again, BodySound.of(again)).recording(), WavSamples.INT_24);
        return file;
    }
}
