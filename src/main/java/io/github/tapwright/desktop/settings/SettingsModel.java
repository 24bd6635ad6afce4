package io.github.tapwright.desktop.settings;

import io.github.tapwright.chart.Light;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.statistics.Figures;
import java.io.IOException;
import java.util.Optional;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The settings in force; a change is kept at once. */
public final class SettingsModel {

    private final SettingsFile file;
    private final Notices notices;
    private final ReadOnlyObjectWrapper<DeskSettings> now;
    private final ReadOnlyObjectWrapper<Light> light;
    private final ReadOnlyDoubleWrapper a4Hz;
    private final ReadOnlyObjectWrapper<Typed> typed;

    /**
     * The settings of an archive.
     *
     * @param file where they are kept
     * @param notices told where they cannot be
     */
    public SettingsModel(SettingsFile file, Notices notices) {
        this.file = file;
        this.notices = notices;
        this.now = new ReadOnlyObjectWrapper<>(file.read());
        this.light = new ReadOnlyObjectWrapper<>(now.get().light());
        this.a4Hz = new ReadOnlyDoubleWrapper(now.get().a4Hz());
        this.typed = new ReadOnlyObjectWrapper<>(Typed.of(now.get()));
        now.addListener((o, before, after) -> {
            light.set(after.light());
            a4Hz.set(after.a4Hz());
            typed.set(Typed.of(after));
        });
    }

    /**
     * All of them.
     *
     * @return changes with {@link #change}
     */
    public ReadOnlyObjectProperty<DeskSettings> now() {
        return now.getReadOnlyProperty();
    }

    /**
     * The light pictures are drawn for.
     *
     * @return changes with the settings
     */
    public ReadOnlyObjectProperty<Light> light() {
        return light.getReadOnlyProperty();
    }

    /**
     * How temperatures are written.
     *
     * @return the units in force
     */
    public Units units() {
        return now.get().units();
    }

    /**
     * The tuning note of note names.
     *
     * @return changes with the settings
     */
    public ReadOnlyDoubleProperty a4Hz() {
        return a4Hz.getReadOnlyProperty();
    }

    /**
     * The humidity the shop is held at.
     *
     * @return the window in force
     */
    public ShopWindow window() {
        return now.get().window();
    }

    /**
     * The maker's own spread of setting up.
     *
     * @return empty for that of the bench's study
     */
    public Optional<SetUpSpread> spread() {
        return now.get().spread();
    }

    /** What holds as it would be typed; stays as it is while light or units change, so that half-typed words do too. */
    ReadOnlyObjectProperty<Typed> typed() {
        return typed.getReadOnlyProperty();
    }

    /** What the maker typed on the workshop's screen: tuning note, open strings, frets, the air of the shop, own spread. */
    record Typed(String a4, String openStrings, String frets, String driest, String dampest, TypedSpread spread) {

        /** As settings would be typed. */
        static Typed of(DeskSettings settings) {
            return new Typed(
                    Figures.plain(settings.a4Hz()),
                    settings.openStrings(),
                    Integer.toString(settings.fretCount()),
                    Figures.plain(settings.window().lowestPercent()),
                    Figures.plain(settings.window().highestPercent()),
                    TypedSpread.of(settings.spread()));
        }
    }

    /** The maker's own spread of setting up: % of frequency, % of Q, dB; nothing at all for the study's. */
    record TypedSpread(String frequencyPercent, String qPercent, String levelDb) {

        static final TypedSpread NOTHING = new TypedSpread("", "", "");

        /** As it would be typed. */
        static TypedSpread of(Optional<SetUpSpread> spread) {
            return spread.map(s -> new TypedSpread(
                            percent(s.frequencyShare()), percent(s.qShare()), Figures.plain(s.levelDb())))
                    .orElse(NOTHING);
        }

        /** To a millionth of a percent, so that 0.07 % comes back as it was typed. */
        private static String percent(double share) {
            return Figures.plain(Math.round(1e8 * share) / 1e6);
        }

        private Optional<SetUpSpread> read() {
            if ((frequencyPercent + qPercent + levelDb).isBlank()) {
                return Optional.empty();
            }
            return Optional.of(SetUpSpread.given(
                    figure("the spread of frequencies", frequencyPercent) / 100,
                    figure("the spread of Q", qPercent) / 100,
                    figure("the spread of levels", levelDb)));
        }

        private static double figure(String what, String words) {
            return Units.figure(what, words)
                    .orElseThrow(() -> new RefusedEntryException(
                            what + " is missing; type a number, or leave all three empty for the study's"));
        }
    }

    /**
     * Takes tuning, window and spread as they were typed, or says what is wrong with them.
     *
     * @param typed word for word
     */
    void take(Typed typed) {
        DeskSettings before = now.get();
        try {
            change(before.tuned(
                            typed("the tuning note", typed.a4()),
                            typed.openStrings().strip(),
                            whole("the number of frets", typed.frets()))
                    .within(new ShopWindow(
                            typed("the driest air", typed.driest()), typed("the dampest air", typed.dampest())))
                    .spreading(typed.spread().read()));
            notices.say("Kept the settings", () -> change(before));
        } catch (IllegalArgumentException e) {
            notices.trouble(String.valueOf(e.getMessage()));
        }
    }

    private static int whole(String what, String words) {
        double figure = typed(what, words);
        if (figure != Math.rint(figure)) {
            throw new RefusedEntryException(what + " is not a whole number; type one such as 19");
        }
        return (int) figure;
    }

    private static double typed(String what, String words) {
        return Units.figure(what, words)
                .orElseThrow(() -> new RefusedEntryException(what + " is missing; type a number"));
    }

    /**
     * Takes other settings.
     *
     * @param next hold from now on
     */
    public void change(DeskSettings next) {
        now.set(next);
        try {
            file.write(next);
        } catch (IOException e) {
            notices.failed("keeping the settings", e);
        }
    }
}
