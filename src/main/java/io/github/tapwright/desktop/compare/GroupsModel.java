package io.github.tapwright.desktop.compare;

import io.github.tapwright.chart.ChartFile;
import io.github.tapwright.chart.Picture;
import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.comparison.group.CompareGroups;
import io.github.tapwright.comparison.group.GroupBy;
import io.github.tapwright.comparison.group.GroupDifference;
import io.github.tapwright.comparison.group.GroupSettings;
import io.github.tapwright.comparison.group.GroupStudy;
import io.github.tapwright.desktop.part.Sentences.Sentence;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.report.ReportSubject;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;

/** Groups of instruments against each other. */
public final class GroupsModel {

    private final CompareGroups compareGroups;
    private final Work work;
    private final Notices notices;
    private volatile Optional<GroupSettings> wanted = Optional.empty();
    private final ObjectProperty<GroupBy> by = new SimpleObjectProperty<>(GroupBy.CONSTRUCTION);
    private final ObjectProperty<StageClass> stage = new SimpleObjectProperty<>(StageClass.STRUNG);
    private final ObjectProperty<Shown> shown = new SimpleObjectProperty<>(Shown.FREQUENCY);
    private final ReadOnlyObjectWrapper<Optional<GroupStudy>> study = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * Nothing compared yet.
     *
     * @param compareGroups compares
     * @param work does what takes long
     * @param notices takes what the maker should know
     */
    public GroupsModel(CompareGroups compareGroups, Work work, Notices notices) {
        this.compareGroups = compareGroups;
        this.work = work;
        this.notices = notices;
        by.addListener((o, before, after) -> refresh());
        stage.addListener((o, before, after) -> refresh());
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
     * Which sittings count.
     *
     * @return strung or not yet strung
     */
    public ObjectProperty<StageClass> stage() {
        return stage;
    }

    /**
     * What is drawn.
     *
     * @return points of one quantity, or mean curves
     */
    public ObjectProperty<Shown> shown() {
        return shown;
    }

    /**
     * The groups against each other.
     *
     * @return empty until they were compared
     */
    public ReadOnlyObjectProperty<Optional<GroupStudy>> study() {
        return study.getReadOnlyProperty();
    }

    /** Compares anew. */
    public void refresh() {
        GroupSettings asked = settings();
        wanted = Optional.of(asked);
        work.start(new Job<>("Comparing groups", progress -> answer(asked)), made -> {
            if (wanted.equals(Optional.of(asked))) {
                study.set(made);
            }
        });
    }

    private Optional<GroupStudy> answer(GroupSettings asked) {
        return wanted.equals(Optional.of(asked)) ? Optional.of(compareGroups.compare(asked)) : Optional.empty();
    }

    private GroupSettings settings() {
        return new GroupSettings(by.get(), stage.get());
    }

    /**
     * The picture that is asked for.
     *
     * @return empty if there is nothing to draw
     */
    public Optional<? extends Picture> picture() {
        return study.get().flatMap(s -> shown.get().of(s));
    }

    /**
     * Every figure of every pair of groups.
     *
     * @return pair by pair
     */
    public List<GroupDifference> differences() {
        return study.get().map(GroupStudy::differences).orElse(List.of());
    }

    /**
     * What was found, in sentences.
     *
     * @return what differs first
     */
    public List<Sentence> findings() {
        return study.get().map(s -> new GroupWordsList(s).findings()).orElse(List.of());
    }

    /**
     * Who is in which group, and what was left out and why.
     *
     * @return in sentences
     */
    public List<Sentence> members() {
        return study.get().map(s -> new GroupWordsList(s).members()).orElse(List.of());
    }

    /**
     * What a report of this study is about.
     *
     * @return these groups
     */
    public ReportSubject subject() {
        return new ReportSubject.OfGroups(settings());
    }

    /**
     * Writes the picture.
     *
     * @param file ends in ".png" or ".svg"
     */
    public void savePicture(Path file) {
        Optional<? extends Picture> picture = picture();
        if (picture.isEmpty()) {
            notices.trouble("There is nothing to draw yet: it takes two groups with sittings");
            return;
        }
        work.start(
                new Job<>("Writing " + file.getFileName(), progress -> {
                    ChartFile.write(picture.get(), file);
                    return file;
                }),
                written -> notices.say("Wrote " + written));
    }
}
