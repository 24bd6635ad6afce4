package io.github.tapwright.desktop.compare;

import io.github.tapwright.chart.Picture;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.group.GroupStudy;
import io.github.tapwright.report.picture.GroupPictures;
import java.util.Optional;

/** What can be drawn of a study of groups. */
public enum Shown {
    /** A point an instrument. */
    FREQUENCY("Every instrument: frequency", Optional.of(Quantity.FREQUENCY)),
    /** A point an instrument. */
    Q("Every instrument: Q", Optional.of(Quantity.Q)),
    /** A point an instrument. */
    DECAY_TIME("Every instrument: decay time", Optional.of(Quantity.DECAY_TIME)),
    /** A point an instrument. */
    PLUCKS("Every instrument: level of plucks", Optional.of(Quantity.LEVEL)),
    /** A curve a group, with its band. */
    CURVES("Mean response of each group", Optional.empty());

    private final String words;
    private final Optional<Quantity> quantity;

    Shown(String words, Optional<Quantity> quantity) {
        this.words = words;
        this.quantity = quantity;
    }

    /**
     * How it reads.
     *
     * @return in words
     */
    public String words() {
        return words;
    }

    Optional<? extends Picture> of(GroupStudy study) {
        return quantity.isPresent() ? GroupPictures.points(study, quantity.get()) : GroupPictures.of(study);
    }
}
