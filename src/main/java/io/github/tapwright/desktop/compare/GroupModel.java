package io.github.tapwright.desktop.compare;

import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.comparison.group.CompareGroups;
import io.github.tapwright.comparison.group.GroupBy;
import io.github.tapwright.comparison.group.GroupDifference;
import io.github.tapwright.comparison.group.GroupFigures;
import io.github.tapwright.comparison.group.GroupSettings;
import io.github.tapwright.comparison.group.GroupStudy;
import io.github.tapwright.comparison.group.GroupWords;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.ShopNumber;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;

/** Groups of instruments against each other. */
public final class GroupModel {

    private final CompareGroups compareGroups;
    private final Work work;
    private final ObjectProperty<GroupBy> by = new SimpleObjectProperty<>(GroupBy.CONSTRUCTION);
    private final ObjectProperty<StageClass> stage = new SimpleObjectProperty<>(StageClass.STRUNG);
    private final ReadOnlyObjectWrapper<Optional<GroupStudy>> studied = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * Nothing compared yet.
     *
     * @param compareGroups compares
     * @param work does what takes long
     */
    public GroupModel(CompareGroups compareGroups, Work work) {
        this.compareGroups = compareGroups;
        this.work = work;
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
     * What came of it.
     *
     * @return empty until groups were compared
     */
    public ReadOnlyObjectProperty<Optional<GroupStudy>> studied() {
        return studied.getReadOnlyProperty();
    }

    /** Compares the groups. */
    public void study() {
        work.start(
                new Job<>(
                        "Comparing groups", progress -> compareGroups.compare(new GroupSettings(by.get(), stage.get()))),
                done -> studied.set(Optional.of(done)));
    }

    /**
     * What was asked.
     *
     * @return each question once
     */
    public List<Subject> subjects() {
        return studied.get().stream()
                .flatMap(s -> s.differences().stream())
                .map(GroupDifference::subject)
                .distinct()
                .toList();
    }

    /**
     * What the study says, in sentences.
     *
     * @return who is in the groups, what differs, what was left out
     */
    public List<String> words() {
        return studied.get().map(GroupModel::words).orElse(List.of());
    }

    private static List<String> words(GroupStudy study) {
        List<String> words = new ArrayList<>();
        study.members()
                .forEach(g -> words.add(g.group() + ": instruments "
                        + g.instruments().stream().map(ShopNumber::text).collect(Collectors.joining(", "))));
        if (study.differences().isEmpty()) {
            words.add("There are no two groups to compare.");
        }
        study.differences().stream()
                .filter(d -> d.evidence().isPresent())
                .forEach(d -> words.add(GroupWords.sentence(d, study.questions())));
        boolean tooFew = study.differences().stream().anyMatch(d -> d.evidence().isEmpty());
        if (tooFew) {
            words.add("Where a group has fewer than " + GroupFigures.FEWEST + " instruments nothing can be said: measure that many of each at least."
                    + " The points show what was measured.");
        }
        leftOut(study).forEach((reason, sittings) -> words.add("Left out, " + reason + ": sittings " + sittings));
        return List.copyOf(words);
    }

    private static Map<String, String> leftOut(GroupStudy study) {
        return study.leftOut().stream()
                .collect(Collectors.groupingBy(
                        LeftOut::reason,
                        LinkedHashMap::new,
                        Collectors.mapping(
                                l -> l.sitting() + " of " + l.instrument(), Collectors.joining(", "))));
    }
}
