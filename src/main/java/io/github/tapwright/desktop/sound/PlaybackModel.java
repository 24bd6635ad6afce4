package io.github.tapwright.desktop.sound;

import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.sitting.SoundOutput;
import io.github.tapwright.statistics.Figures;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleDoubleProperty;

/** What is heard, and how loud. The first sound waits until the maker has read the caution. */
public final class PlaybackModel {

    /** Where the level begins, dB re the recording: low, since nobody knows how the amplifier stands. */
    public static final double FIRST_LEVEL_DB = -20;

    /** The least level. */
    public static final double LEAST_DB = -50;

    /** Said before the first sound. Common practice, no source. */
    public static final String CAUTION = "Loud playback can hurt your hearing, and headphones most of all. Turn the"
            + " volume of your system down first, begin low, and raise it while you listen. Where rules for noise at"
            + " work hold, keep to them.";

    private final SoundOutput output;
    private final Work work;
    private final Notices notices;
    private final Executor screen;
    private final DoubleProperty levelDb = new SimpleDoubleProperty(FIRST_LEVEL_DB);
    private final ReadOnlyObjectWrapper<Optional<Asked>> waiting = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<String>> playing = new ReadOnlyObjectWrapper<>(Optional.empty());
    private boolean cautioned;
    private long asked;
    /** Which of those asked for sounds, or sounded last: while the next is read, it may end by itself. */
    private long sounding;

    /**
     * What the maker wants to hear.
     *
     * @param words what it is called
     * @param sound brings it, off the screen's thread
     * @param gainDb how far it is turned down besides the level, 0 dB or less
     * @param started runs once it sounds
     */
    public record Asked(String words, Job.Task<Recording> sound, double gainDb, Runnable started) {}

    /**
     * Silence.
     *
     * @param output makes the sound
     * @param work does what takes long
     * @param notices takes what the maker should know
     * @param screen runs things on the screen's thread
     */
    public PlaybackModel(SoundOutput output, Work work, Notices notices, Executor screen) {
        this.output = output;
        this.work = work;
        this.notices = notices;
        this.screen = screen;
    }

    /**
     * How loud.
     *
     * @return dB re the recording, {@value #LEAST_DB} to 0; holds from the next sound on
     */
    public DoubleProperty levelDb() {
        return levelDb;
    }

    /**
     * How loud, in words.
     *
     * @return such as "Level −20 dB"
     */
    public String levelWords() {
        return "Level " + Figures.text(levelDb.get(), 0) + " dB";
    }

    /**
     * What waits for the caution to be read.
     *
     * @return empty most of the time
     */
    public ReadOnlyObjectProperty<Optional<Asked>> waiting() {
        return waiting.getReadOnlyProperty();
    }

    /**
     * What sounds just now.
     *
     * @return its words; empty in silence
     */
    public ReadOnlyObjectProperty<Optional<String>> playing() {
        return playing.getReadOnlyProperty();
    }

    /**
     * Plays, or shows the caution first.
     *
     * @param asked what
     */
    public void play(Asked asked) {
        if (cautioned) {
            start(asked);
        } else {
            waiting.set(Optional.of(asked));
        }
    }

    /** The maker has read the caution: plays what waits. */
    public void acceptCaution() {
        cautioned = true;
        Optional<Asked> asked = waiting.get();
        waiting.set(Optional.empty());
        asked.ifPresent(this::start);
    }

    /** The maker would rather not; the caution will come again. */
    public void decline() {
        waiting.set(Optional.empty());
    }

    /** Silence; what waits for the caution is not wanted any more either. */
    public void stop() {
        asked++;
        waiting.set(Optional.empty());
        output.stop();
        playing.set(Optional.empty());
    }

    private void start(Asked wanted) {
        long mine = ++asked;
        work.start(new Job<>("Reading " + wanted.words(), wanted.sound()), sound -> {
            if (mine == asked) {
                sound(wanted, sound, mine);
            }
        });
    }

    private void sound(Asked wanted, Recording sound, long mine) {
        double level = Math.max(LEAST_DB, Math.min(0, levelDb.get()));
        sounding = mine;
        playing.set(Optional.of(wanted.words()));
        try {
            output.play(sound, level + wanted.gainDb(), trouble -> screen.execute(() -> over(mine, trouble)));
        } catch (RefusedEntryException e) {
            playing.set(Optional.empty());
            notices.failed("Playing " + wanted.words(), e);
            return;
        }
        wanted.started().run();
    }

    private void over(long mine, Optional<String> trouble) {
        if (mine == sounding) {
            playing.set(Optional.empty());
        }
        trouble.ifPresent(notices::trouble);
    }
}
