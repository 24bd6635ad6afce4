package io.github.tapwright.desktop.notes;

import io.github.tapwright.chart.NotePicture;
import io.github.tapwright.desktop.sound.PlaybackModel;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.note.Partial;
import io.github.tapwright.sitting.CutStretch;
import io.github.tapwright.sitting.FindTaps;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.sitting.Stretch;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** A run of notes or plucks looked at, and the note chosen in it. */
public final class NotesModel {

    private final UseCases useCases;
    private final PlaybackModel playback;
    private final Work work;
    private final ZoneId zone;
    private final ObservableList<SittingSummary> choices = FXCollections.observableArrayList();
    private final ReadOnlyObjectWrapper<Optional<Shown>> shown = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObjectProperty<BoardQuantity> quantity = new SimpleObjectProperty<>(BoardQuantity.EARLY_DECAY);
    private final ReadOnlyObjectWrapper<Optional<Integer>> note = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * What the model asks of the program.
     *
     * @param listSittings lists what can be looked at
     * @param showSitting reads one
     * @param findTaps finds the taps a dead note is held against
     * @param cutStretch takes a note out of its original
     */
    public record UseCases(
            ListSittings listSittings, ShowSitting showSitting, FindTaps findTaps, CutStretch cutStretch) {}

    /** The sitting looked at, with the body's resonances of the taps nearest in time. */
    private record Shown(Sitting sitting, List<ShownResonance> body) {}

    /**
     * Nothing looked at yet.
     *
     * @param useCases what is asked of the program
     * @param playback makes notes heard
     * @param work does what takes long
     * @param zone the workshop's
     */
    public NotesModel(UseCases useCases, PlaybackModel playback, Work work, ZoneId zone) {
        this.useCases = useCases;
        this.playback = playback;
        this.work = work;
        this.zone = zone;
    }

    /**
     * Every sitting for notes or plucks.
     *
     * @return what can be looked at
     */
    public ObservableList<SittingSummary> choices() {
        return choices;
    }

    /**
     * Changes when another sitting is looked at.
     *
     * @return to be listened to
     */
    public ReadOnlyObjectProperty<?> shown() {
        return shown.getReadOnlyProperty();
    }

    /**
     * What the map shows.
     *
     * @return may be set
     */
    public ObjectProperty<BoardQuantity> quantity() {
        return quantity;
    }

    /**
     * Which note is chosen.
     *
     * @return its place in the run, from 0; empty if none is
     */
    public ReadOnlyObjectProperty<Optional<Integer>> note() {
        return note.getReadOnlyProperty();
    }

    /** Lists anew what can be looked at, and shows what is known now where something was corrected. */
    public void refresh() {
        sitting().map(Sitting::id).ifPresent(id -> work.start(reading(id), this::showAnew));
        work.start(
                new Job<>(
                        "Listing sittings",
                        progress -> useCases.listSittings().all().stream()
                                .filter(s -> !s.procedure().equals(Procedure.BodyTaps.KEY))
                                .toList()),
                choices::setAll);
    }

    /**
     * Looks at a sitting.
     *
     * @param id which; one for notes or plucks
     */
    public void open(SittingId id) {
        work.start(reading(id), read -> show(read, Optional.empty()));
    }

    private Job<Shown> reading(SittingId id) {
        return new Job<>("Reading sitting " + id, progress -> read(id));
    }

    private void show(Shown read, Optional<Integer> chosen) {
        note.set(Optional.empty());
        shown.set(Optional.of(read));
        note.set(chosen);
    }

    /** By the time it is read another may be looked at. The chosen note stays chosen, whatever its place in the run is now. */
    private void showAnew(Shown fresh) {
        if (shown.get()
                .filter(s -> s.sitting().id().equals(fresh.sitting().id()) && !s.equals(fresh))
                .isPresent()) {
            show(fresh, chosen().flatMap(n -> place(fresh, n.attackSeconds())));
        }
    }

    private static Optional<Integer> place(Shown of, double attackSeconds) {
        List<Fingerboard.Note> notes =
                of.sitting().latest().findings().notes().map(Fingerboard::notes).orElse(List.of());
        return IntStream.range(0, notes.size())
                .boxed()
                .filter(i -> notes.get(i).attackSeconds() == attackSeconds)
                .findFirst();
    }

    private Shown read(SittingId id) {
        Sitting sitting = useCases.showSitting().show(id);
        if (sitting.latest().taps().isPresent()) {
            throw new RefusedEntryException(
                    "sitting " + id + " is for taps; choose a sitting of notes or plucks, or open it under Response");
        }
        List<ShownResonance> body = useCases.findTaps()
                .near(sitting)
                .map(t -> t.resonances(t.latest()))
                .orElse(List.of());
        return new Shown(sitting, body);
    }

    /**
     * The sitting looked at.
     *
     * @return empty until one is opened
     */
    public Optional<Sitting> sitting() {
        return shown.get().map(Shown::sitting);
    }

    /**
     * The run of notes looked at.
     *
     * @return empty if there is none, or the sitting is for plucks
     */
    public Optional<Fingerboard> run() {
        return sitting().flatMap(s -> s.latest().findings().notes());
    }

    /**
     * The plucks looked at.
     *
     * @return empty if there are none, or the sitting is for notes
     */
    public Optional<PluckRun> plucks() {
        return sitting().flatMap(s -> s.latest().findings().plucks());
    }

    private Optional<Board> board() {
        return run().map(r -> new Board(r, shown.get().map(Shown::body).orElse(List.of())));
    }

    /**
     * The map.
     *
     * @return the places that hold a note
     */
    public List<BoardCell> cells() {
        return board().map(b -> b.cells(quantity.get())).orElse(List.of());
    }

    /**
     * What stands out.
     *
     * @return a paragraph, with what the reader must know
     */
    public String summary() {
        List<String> words = new ArrayList<>();
        sitting()
                .flatMap(Sitting::setAside)
                .ifPresent(why -> words.add("Beware: this sitting is set aside (" + why.reason() + ")."));
        board().ifPresent(b -> words.add(b.summary()));
        run().ifPresent(r -> r.warnings().forEach(w -> words.add("Beware: " + w + ".")));
        plucks().ifPresent(p -> words.add(PluckWords.of(p)));
        return String.join(" ", words);
    }

    /**
     * The open strings of the plucks looked at.
     *
     * @return one row a string that was plucked
     */
    public List<PluckMean> pluckMeans() {
        return plucks().map(PluckMean::of).orElse(List.of());
    }

    /**
     * Chooses a note.
     *
     * @param number its place in the run, from 0
     */
    public void choose(int number) {
        if (run().filter(r -> number >= 0 && number < r.notes().size()).isPresent()) {
            note.set(Optional.of(number));
        }
    }

    private Optional<Fingerboard.Note> chosen() {
        return run().flatMap(r -> note.get().map(n -> r.notes().get(n)));
    }

    /**
     * What the chosen note is called.
     *
     * @return place or number
     */
    public String noteTitle() {
        return chosen().map(n -> n.place()
                        .map(p -> "String " + p.string() + ", fret " + p.fret())
                        .orElse("Note " + (note.get().orElse(0) + 1) + ", without a place"))
                .orElse("Choose a note on the map");
    }

    /**
     * What is known about the chosen note.
     *
     * @return line by line
     */
    public List<NoteFact> facts() {
        return chosen().map(n -> NoteFacts.of(
                        n, run().orElseThrow().settings(), n.place().flatMap(p -> board().flatMap(b -> b.dead(p)))))
                .orElse(List.of());
    }

    /**
     * The partials of the chosen note.
     *
     * @return lowest first
     */
    public List<Partial> partials() {
        return chosen().map(n -> n.result().partials()).orElse(List.of());
    }

    /**
     * The picture of the chosen note's partials.
     *
     * @return empty if it has none
     */
    public Optional<NotePicture> picture() {
        return chosen().flatMap(n -> NotePicture.of(noteTitle(), n.result()));
    }

    /**
     * The chosen note as sound.
     *
     * @return where it lies; empty if none is chosen
     */
    public Optional<Stretch> stretch() {
        return sitting().flatMap(s -> note.get().map(n -> Stretch.ofNote(s, n)));
    }

    /** Plays the chosen note from the kept original. */
    public void hear() {
        stretch()
                .ifPresent(s -> playback.play(new PlaybackModel.Asked(
                        noteTitle(), progress -> useCases.cutStretch().cut(s), 0, () -> {})));
    }

    /**
     * What a sitting is called here.
     *
     * @param of which
     * @return instrument, day, what for, and why it is set aside if it is
     */
    public String title(SittingSummary of) {
        return of.instrument() + ", " + of.takenAt().text(zone) + ", " + of.procedure()
                + of.stage().map(s -> ", " + s.words()).orElse("")
                + of.setAside().map(why -> ", set aside: " + why.reason()).orElse("");
    }
}
