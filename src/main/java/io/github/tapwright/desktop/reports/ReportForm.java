package io.github.tapwright.desktop.reports;

import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.comparison.group.GroupBy;
import io.github.tapwright.comparison.group.GroupSettings;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.report.ReportKind;
import io.github.tapwright.report.ReportSubject;
import io.github.tapwright.sitting.SittingId;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What kind of report is asked for, as chosen on the screen. */
public final class ReportForm {

    private final ObjectProperty<About> about = new SimpleObjectProperty<>(About.SITTING);
    private final ObjectProperty<Optional<SittingChoice>> sitting = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<SittingChoice>> against = new SimpleObjectProperty<>(Optional.empty());
    private final StringProperty despite = new SimpleStringProperty("");
    private final ObjectProperty<Optional<ShopNumber>> instrument = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<GroupBy> by = new SimpleObjectProperty<>(GroupBy.CONSTRUCTION);
    private final ObjectProperty<StageClass> stage = new SimpleObjectProperty<>(StageClass.STRUNG);
    private final ObjectProperty<ReportKind> kind = new SimpleObjectProperty<>(ReportKind.CLIENT);
    private final ObjectProperty<Format> format = new SimpleObjectProperty<>(Format.PDF);

    private final SettingsModel settings;

    /** Nothing chosen yet; the settings hold the window of the shop and the maker's own spread of setting up. */
    ReportForm(SettingsModel settings) {
        this.settings = settings;
        List.of(sitting, against)
                .forEach(choice -> choice.addListener((o, before, after) -> forgetReason(before, after)));
    }

    /** A reason holds for the two sittings it was given for. */
    private void forgetReason(Optional<SittingChoice> before, Optional<SittingChoice> after) {
        if (!before.map(SittingChoice::id).equals(after.map(SittingChoice::id))) {
            despite.set("");
        }
    }

    /**
     * What it is about.
     *
     * @return changeable
     */
    public ObjectProperty<About> about() {
        return about;
    }

    /**
     * Which sitting.
     *
     * @return empty until chosen
     */
    public ObjectProperty<Optional<SittingChoice>> sitting() {
        return sitting;
    }

    /**
     * Which earlier one it is set against.
     *
     * @return empty until chosen
     */
    public ObjectProperty<Optional<SittingChoice>> against() {
        return against;
    }

    /**
     * The maker's reason to compare what the conditions forbid.
     *
     * @return blank for none
     */
    public StringProperty despite() {
        return despite;
    }

    /**
     * Whose history.
     *
     * @return empty until chosen
     */
    public ObjectProperty<Optional<ShopNumber>> instrument() {
        return instrument;
    }

    /**
     * What makes a group.
     *
     * @return construction or kind
     */
    public ObjectProperty<GroupBy> by() {
        return by;
    }

    /**
     * Which sittings count in groups.
     *
     * @return strung or not yet strung
     */
    public ObjectProperty<StageClass> stage() {
        return stage;
    }

    /**
     * Whom the report is for.
     *
     * @return changeable
     */
    public ObjectProperty<ReportKind> kind() {
        return kind;
    }

    /**
     * How it is written.
     *
     * @return changeable
     */
    public ObjectProperty<Format> format() {
        return format;
    }

    /** Takes over what another screen wants a report of. */
    void take(ReportSubject subject, List<SittingChoice> sittings) {
        if (subject instanceof ReportSubject.OfSitting one) {
            about.set(About.SITTING);
            sitting.set(find(one.sitting(), sittings));
        } else if (subject instanceof ReportSubject.OfTwo two) {
            about.set(About.TWO);
            sitting.set(find(two.sitting(), sittings));
            against.set(find(two.against(), sittings));
            despite.set(two.settings().despite().orElse(""));
        } else if (subject instanceof ReportSubject.OfHistory history) {
            about.set(About.HISTORY);
            instrument.set(Optional.of(history.instrument()));
        } else if (subject instanceof ReportSubject.OfGroups groups) {
            about.set(About.GROUPS);
            by.set(groups.settings().by());
            stage.set(groups.settings().stage());
        }
    }

    private static Optional<SittingChoice> find(SittingId id, List<SittingChoice> sittings) {
        return sittings.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /**
     * What the report shall be about.
     *
     * @throws RefusedEntryException if something is still to be chosen
     */
    ReportSubject subject() {
        return switch (about.get()) {
            case SITTING -> new ReportSubject.OfSitting(chosen(sitting, "a sitting"), settings.spread());
            case TWO ->
                new ReportSubject.OfTwo(
                        chosen(sitting, "a sitting"),
                        chosen(against, "a sitting to set it against"),
                        new CompareSittings.Settings(
                                settings.spread(),
                                settings.window(),
                                Optional.of(despite.get().strip()).filter(why -> !why.isEmpty())));
            case HISTORY ->
                new ReportSubject.OfHistory(
                        instrument.get().orElseThrow(() -> missing("an instrument")),
                        settings.spread(),
                        settings.window());
            case GROUPS -> new ReportSubject.OfGroups(new GroupSettings(by.get(), stage.get()));
        };
    }

    private static SittingId chosen(ObjectProperty<Optional<SittingChoice>> choice, String what) {
        return choice.get().map(SittingChoice::id).orElseThrow(() -> missing(what));
    }

    private static RefusedEntryException missing(String what) {
        return new RefusedEntryException("Choose " + what + " first");
    }

    /**
     * A name for the file.
     *
     * @return without a folder
     */
    public String fileName() {
        String what = switch (about.get()) {
            case SITTING, TWO ->
                sitting.get()
                        .map(s -> "guitar-" + s.instrument() + "-sitting-" + s.id())
                        .orElse("sitting");
            case HISTORY ->
                instrument.get().map(i -> "guitar-" + i + "-history").orElse("history");
            case GROUPS -> "groups-by-" + by.get().key();
        };
        return what.replaceAll("[^\\p{L}\\p{N}._-]+", "-") + "-" + kind.get().key() + "."
                + format.get().ending();
    }
}
