package io.github.tapwright.desktop.listening;

import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.sitting.Stretch;
import java.util.List;
import java.util.stream.IntStream;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The sounds a listening is made of: where they come from, which there are, which were chosen. */
public final class SoundChoice {

    private final ListSittings listSittings;
    private final ShowSitting showSitting;
    private final Work work;
    private final Notices notices;
    private final ObservableList<SittingSummary> sittings = FXCollections.observableArrayList();
    private final ObservableList<Stretch> offered = FXCollections.observableArrayList();
    private final ObservableList<Stretch> chosen = FXCollections.observableArrayList();

    SoundChoice(ListSittings listSittings, ShowSitting showSitting, Work work, Notices notices) {
        this.listSittings = listSittings;
        this.showSitting = showSitting;
        this.work = work;
        this.notices = notices;
    }

    void refresh() {
        work.start(new Job<>("Listing sittings", progress -> listSittings.inUse()), sittings::setAll);
    }

    /**
     * Every sitting sounds can come from.
     *
     * @return changes when the screen is shown
     */
    public ObservableList<SittingSummary> sittings() {
        return sittings;
    }

    /**
     * The sounds of the sitting looked into.
     *
     * @return notes of a run, else whole recordings
     */
    public ObservableList<Stretch> offered() {
        return offered;
    }

    /**
     * The sounds to be listened to.
     *
     * @return in the order chosen
     */
    public ObservableList<Stretch> chosen() {
        return chosen;
    }

    /**
     * Looks into a sitting.
     *
     * @param id which
     */
    public void offer(SittingId id) {
        work.start(new Job<>("Reading sitting " + id, progress -> sounds(showSitting.use(id))), offered::setAll);
    }

    private static List<Stretch> sounds(Sitting sitting) {
        return sitting.latest()
                .findings()
                .notes()
                .map(run -> IntStream.range(0, run.notes().size())
                        .mapToObj(n -> Stretch.ofNote(sitting, n))
                        .toList())
                .orElseGet(() -> IntStream.range(0, sitting.recordings().size())
                        .mapToObj(r -> Stretch.ofRecording(sitting, r))
                        .toList());
    }

    /**
     * Chooses a sound.
     *
     * @param sound which; a second time changes nothing
     */
    public void choose(Stretch sound) {
        if (!chosen.contains(sound)) {
            chosen.add(sound);
        }
    }

    /**
     * Takes a sound away from the choice; it can be taken back.
     *
     * @param sound which
     */
    public void leaveOut(Stretch sound) {
        int at = chosen.indexOf(sound);
        if (at >= 0) {
            chosen.remove(at);
            notices.say("Left out " + sound.words(), () -> chosen.add(Math.min(at, chosen.size()), sound));
        }
    }
}
