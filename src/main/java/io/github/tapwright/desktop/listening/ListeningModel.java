package io.github.tapwright.desktop.listening;

import io.github.tapwright.comparison.listening.ListenBlind;
import io.github.tapwright.comparison.listening.ListeningWords;
import io.github.tapwright.comparison.listening.PreparedSounds;
import io.github.tapwright.desktop.sound.PlaybackModel;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.LatestQuestion;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.sitting.Stretch;
import io.github.tapwright.sitting.listening.HeardSound;
import io.github.tapwright.sitting.listening.ListeningSession;
import io.github.tapwright.sitting.listening.ListeningTrial;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** A blind listening from the choice of sounds to the verdict; it never says which sound is which before the end. */
public final class ListeningModel {

    /** How many questions can be chosen. */
    public static final List<Integer> TRIAL_COUNTS = List.of(10, 12, 14, 16, 18, 20);

    private static final int USUAL_TRIALS = 16;

    private final UseCases useCases;
    private final PlaybackModel playback;
    private final Work work;
    private final Notices notices;
    private final LongSupplier seeds;
    private final ZoneId zone;
    private final SoundChoice choice;
    private final ObservableList<ListeningSession> sessions = FXCollections.observableArrayList();
    private final StringProperty listener = new SimpleStringProperty("");
    private final StringProperty playedThrough = new SimpleStringProperty("");
    private final ObjectProperty<Integer> trialCount = new SimpleObjectProperty<>(USUAL_TRIALS);
    private final ReadOnlyObjectWrapper<Optional<ListeningSession>> session =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Set<Letter>> heard = new ReadOnlyObjectWrapper<>(EnumSet.noneOf(Letter.class));
    /** Which listening shall be on the screen: the one begun or opened last, or none. */
    private final LatestQuestion wanted = new LatestQuestion();

    private Optional<PreparedSounds> prepared = Optional.empty();
    private int playCount;

    /**
     * What the model asks of the program.
     *
     * @param listSittings lists where sounds can come from
     * @param showSitting reads one
     * @param listenBlind prepares sounds and keeps answers
     */
    public record UseCases(ListSittings listSittings, ShowSitting showSitting, ListenBlind listenBlind) {}

    /**
     * Nothing chosen yet.
     *
     * @param useCases what is asked of the program
     * @param playback makes sounds heard
     * @param work does what takes long
     * @param notices takes what the maker should know
     * @param seeds chance
     * @param zone the workshop's
     */
    public ListeningModel(
            UseCases useCases, PlaybackModel playback, Work work, Notices notices, LongSupplier seeds, ZoneId zone) {
        this.useCases = useCases;
        this.choice = new SoundChoice(useCases.listSittings(), useCases.showSitting(), work, notices);
        this.playback = playback;
        this.work = work;
        this.notices = notices;
        this.seeds = seeds;
        this.zone = zone;
    }

    /**
     * The sounds to choose from, and those chosen.
     *
     * @return the choice
     */
    public SoundChoice choice() {
        return choice;
    }

    /**
     * Every listening of the archive.
     *
     * @return the latest first
     */
    public ObservableList<ListeningSession> sessions() {
        return sessions;
    }

    /**
     * Who listens.
     *
     * @return may stay blank
     */
    public StringProperty listener() {
        return listener;
    }

    /**
     * Headphones or loudspeaker.
     *
     * @return may stay blank
     */
    public StringProperty playedThrough() {
        return playedThrough;
    }

    /**
     * How many questions.
     *
     * @return one of {@link #TRIAL_COUNTS}
     */
    public ObjectProperty<Integer> trialCount() {
        return trialCount;
    }

    /**
     * The listening under way or looked at.
     *
     * @return empty while sounds are chosen
     */
    public ReadOnlyObjectProperty<Optional<ListeningSession>> session() {
        return session.getReadOnlyProperty();
    }

    /**
     * What was heard since the question was asked.
     *
     * @return some of A, B and X
     */
    public ReadOnlyObjectProperty<Set<Letter>> heard() {
        return heard.getReadOnlyProperty();
    }

    /** Lists anew sittings and listenings. */
    public void refresh() {
        choice.refresh();
        work.start(
                new Job<>(
                        "Listing listenings", progress -> useCases.listenBlind().all()),
                all -> {
                    List<ListeningSession> latestFirst = new ArrayList<>(all);
                    Collections.reverse(latestFirst);
                    sessions.setAll(latestFirst);
                });
    }

    /** Matches the sounds and asks the first question. */
    public void begin() {
        List<Stretch> sounds = List.copyOf(choice.chosen());
        int trials = trialCount.get();
        Optional<String> who = typed(listener);
        Optional<String> through = typed(playedThrough);
        long mine = wanted.ask();
        work.start(
                new Job<>("Matching the sounds", progress -> {
                    PreparedSounds ready = useCases.listenBlind().prepare(sounds, progress);
                    return wanted.isLatest(mine)
                            ? Optional.of(new Begun(
                                    ready,
                                    useCases.listenBlind().begin(ready, seeds.getAsLong(), trials, who, through)))
                            : Optional.<Begun>empty();
                }),
                begun -> begun.ifPresent(b -> ask(b, mine)));
    }

    private record Begun(PreparedSounds sounds, ListeningSession session) {}

    private static Optional<String> typed(StringProperty text) {
        return Optional.of(text.get().strip()).filter(t -> !t.isEmpty());
    }

    /**
     * Goes on with a listening that was left, or shows the verdict of a finished one.
     *
     * @param left which
     */
    public void open(ListeningSession left) {
        long mine = wanted.ask();
        if (left.finished()) {
            prepared = Optional.empty();
            session.set(Optional.of(left));
            return;
        }
        List<Stretch> sounds =
                left.setUp().sounds().stream().map(HeardSound::stretch).toList();
        work.start(
                new Job<>(
                        "Reading the sounds",
                        progress -> new Begun(useCases.listenBlind().prepare(sounds, progress), left)),
                begun -> ask(begun, mine));
    }

    private void ask(Begun begun, long mine) {
        if (wanted.isLatest(mine)) {
            prepared = Optional.of(begun.sounds);
        }
        ask(begun.session, mine);
    }

    /** One that was left meanwhile waits in the list, with what became of it. */
    private void ask(ListeningSession asked, long mine) {
        if (!wanted.isLatest(mine)) {
            refresh();
            return;
        }
        playback.stop(); // what still sounds, or is about to, belongs to the question before
        playCount = 0;
        heard.set(EnumSet.noneOf(Letter.class));
        session.set(Optional.of(asked));
        if (asked.finished()) {
            refresh();
        }
    }

    private Optional<ListeningTrial> trial() {
        return session.get().flatMap(ListenBlind::next);
    }

    /**
     * Plays one of the three, as often as the listener likes.
     *
     * @param letter which
     */
    public void play(Letter letter) {
        Optional<ListeningTrial> trial = trial();
        if (trial.isEmpty() || prepared.isEmpty()) {
            return;
        }
        ListeningSession asked = session.get().orElseThrow();
        int sound = switch (letter) {
            case A -> trial.get().a();
            case B -> trial.get().b();
            case X -> trial.get().x();
        };
        PreparedSounds ready = prepared.get();
        playback.play(new PlaybackModel.Asked(
                letter.name(),
                progress -> ready.recordings().get(sound),
                asked.setUp().sounds().get(sound).gainDb(),
                () -> count(letter, asked)));
    }

    private void count(Letter letter, ListeningSession asked) {
        if (session.get().filter(asked::equals).isPresent()) {
            playCount++;
            Set<Letter> more = EnumSet.copyOf(heard.get().isEmpty() ? EnumSet.of(letter) : heard.get());
            more.add(letter);
            heard.set(more);
        }
    }

    /**
     * Whether the question can be answered: each of the three was heard.
     *
     * @return false before, and when all were answered
     */
    public boolean canAnswer() {
        return trial().isPresent() && prepared.isPresent() && heard.get().size() == Letter.values().length;
    }

    /**
     * Answers; the answer is on the disk before the next question is asked, and cannot be taken back.
     *
     * @param saidA whether the listener says that X is A
     */
    public void answer(boolean saidA) {
        if (!canAnswer()) {
            notices.trouble("Listen to A, B and X first, each as often as you like, then answer");
            return;
        }
        ListeningSession asked = session.get().orElseThrow();
        int plays = playCount;
        long mine = wanted.ask();
        playback.stop();
        heard.set(EnumSet.noneOf(Letter.class));
        work.start(
                new Job<>(
                        "Keeping the answer", progress -> useCases.listenBlind().answer(asked, saidA, plays)),
                next -> ask(next, mine));
    }

    /** Goes back to the choice of sounds; a listening under way waits in the list. */
    public void leave() {
        wanted.ask();
        playback.stop();
        session.get()
                .filter(s -> !s.finished())
                .ifPresent(s -> notices.say(
                        "Listening " + s.id() + " is not finished; go on with it in the list whenever you like"));
        prepared = Optional.empty();
        session.set(Optional.empty());
        refresh();
    }

    /**
     * Where the listening stands.
     *
     * @return one line
     */
    public String standing() {
        return session.get()
                .map(s -> s.finished()
                        ? ListeningWords.brief(s)
                        : "Question " + (s.answers().size() + 1) + " of "
                                + s.setUp().trialCount() + ": is X the sound A or the sound B?")
                .orElse("");
    }

    /**
     * The verdict in words.
     *
     * @return paragraphs; none before the end
     */
    public List<String> result() {
        return session.get()
                .filter(ListeningSession::finished)
                .map(s -> ListeningWords.result(s, withThis(s)))
                .orElse(List.of());
    }

    private List<ListeningSession> withThis(ListeningSession finished) {
        List<ListeningSession> all = new ArrayList<>(sessions);
        all.removeIf(s -> s.id().equals(finished.id()));
        all.add(finished);
        return all;
    }

    /**
     * What the verdict does not say, and how the sounds were matched.
     *
     * @return points of a list; none before the end
     */
    public List<String> limits() {
        return session.get()
                .filter(ListeningSession::finished)
                .map(ListeningWords::limits)
                .orElse(List.of());
    }

    /**
     * How loud the sounds were and how they were matched.
     *
     * @return one line a sound; none before the end, since it could give them away
     */
    public List<String> matching() {
        return session.get()
                .filter(ListeningSession::finished)
                .map(ListeningWords::matching)
                .orElse(List.of());
    }

    /**
     * What a sitting is called here.
     *
     * @param of which
     * @return instrument, day, what for
     */
    public String title(SittingSummary of) {
        return of.instrument() + ", " + of.takenAt().text(zone) + ", " + of.procedure()
                + of.stage().map(s -> ", " + s.words()).orElse("");
    }

    /**
     * When a listening began.
     *
     * @param of which
     * @return day and time in the workshop's zone
     */
    public String when(ListeningSession of) {
        return Moment.at(of.setUp().startedAt()).text(zone);
    }
}
