package io.github.tapwright.audio;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.recording.UnreadableRecordingException;
import io.github.tapwright.sitting.live.InputDevice;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.LiveInput;
import io.github.tapwright.sitting.live.RunningInput;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.TargetDataLine;

/** The machine's sound inputs, as Java's sound system gives them. */
public final class SoundCard implements LiveInput {

    /** Long enough for a machine that is busy for a moment; blocks are fetched much more often. */
    private static final double BUFFER_SECONDS = 0.4;

    @Override
    public List<InputDevice> devices() {
        return Arrays.stream(AudioSystem.getMixerInfo())
                .map(info ->
                        new InputDevice(info.getName(), info.getDescription(), offered(AudioSystem.getMixer(info))))
                .filter(device -> !device.formats().isEmpty())
                .toList();
    }

    private static List<LiveFormat> offered(Mixer mixer) {
        return LiveFormat.all().stream()
                .filter(format -> mixer.isLineSupported(line(format)))
                .toList();
    }

    @Override
    public RunningInput open(Optional<String> device, LiveFormat format) {
        List<InputDevice> devices = devices();
        if (devices.isEmpty()) {
            throw new UnreadableRecordingException("this machine has no sound input; plug in a microphone or an audio"
                    + " interface, and check that no other program holds it");
        }
        InputDevice chosen = device.map(name -> named(devices, name)).orElse(devices.get(0));
        if (!chosen.formats().contains(format)) {
            throw new RefusedEntryException("the input '" + chosen.name() + "' does not offer " + format.text()
                    + "; it offers "
                    + chosen.formats().stream().map(LiveFormat::text).collect(Collectors.joining("; ")));
        }
        return start(chosen, format);
    }

    /** A whole name, or a part of one that fits a single device. */
    private static InputDevice named(List<InputDevice> devices, String name) {
        List<InputDevice> whole =
                devices.stream().filter(d -> d.name().equals(name)).toList();
        List<InputDevice> fitting = whole.isEmpty()
                ? devices.stream().filter(d -> d.name().contains(name)).toList()
                : whole;
        if (fitting.size() == 1 || !whole.isEmpty()) {
            return fitting.get(0);
        }
        String known = devices.stream().map(d -> "'" + d.name() + "'").collect(Collectors.joining(", "));
        throw new RefusedEntryException(
                (fitting.isEmpty() ? "there is no input '" + name + "'" : "several inputs fit '" + name + "'")
                        + "; choose one of " + known);
    }

    private static RunningInput start(InputDevice device, LiveFormat format) {
        try {
            TargetDataLine line = (TargetDataLine) mixer(device).getLine(line(format));
            line.open(audioFormat(format), ((int) (BUFFER_SECONDS * format.rateHz())) * format.frameBytes());
            return new LineReading(device.name(), line, format);
        } catch (LineUnavailableException | IllegalArgumentException | SecurityException e) {
            throw new UnreadableRecordingException(
                    "the input '" + device.name() + "' cannot be opened (" + e.getMessage()
                            + "); close other programs that record, or plug it in again",
                    e);
        }
    }

    private static Mixer mixer(InputDevice device) {
        return Arrays.stream(AudioSystem.getMixerInfo())
                .filter(info -> info.getName().equals(device.name())
                        && info.getDescription().equals(device.description()))
                .map(AudioSystem::getMixer)
                .filter(mixer -> !offered(mixer).isEmpty())
                .findFirst()
                .orElseThrow(() -> new UnreadableRecordingException(
                        "the input '" + device.name() + "' is gone; plug it in again"));
    }

    private static DataLine.Info line(LiveFormat format) {
        return new DataLine.Info(TargetDataLine.class, audioFormat(format));
    }

    private static AudioFormat audioFormat(LiveFormat format) {
        return new AudioFormat(format.rateHz(), format.bits(), format.channelCount(), true, false);
    }
}
