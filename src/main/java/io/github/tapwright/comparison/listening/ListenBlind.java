package io.github.tapwright.comparison.listening;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.level.broadcast.LoudnessMatch;
import io.github.tapwright.level.broadcast.MatchedBy;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.sitting.CutStretch;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Stretch;
import io.github.tapwright.sitting.listening.HeardSound;
import io.github.tapwright.sitting.listening.ListeningAnswer;
import io.github.tapwright.sitting.listening.ListeningId;
import io.github.tapwright.sitting.listening.ListeningSession;
import io.github.tapwright.sitting.listening.ListeningStore;
import io.github.tapwright.sitting.listening.ListeningTrial;
import io.github.tapwright.sitting.listening.NewListening;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Prepares blind listenings, keeps their answers and lets one go on that was left. */
public final class ListenBlind {

    private final ListeningStore listenings;
    private final CutStretch cutStretch;
    private final Clock clock;

    /**
     * Joins the use case with what it needs.
     *
     * @param listenings where listenings are kept
     * @param cutStretch cuts sound out of originals
     * @param clock tells the time
     */
    public ListenBlind(ListeningStore listenings, CutStretch cutStretch, Clock clock) {
        this.listenings = listenings;
        this.cutStretch = cutStretch;
        this.clock = clock;
    }

    /**
     * Cuts sounds to one length and matches their loudness: by the loudest 400 ms if one of them is a note, else by the
     * integrated loudness.
     *
     * @param stretches the sounds, two or more, no two the same
     * @param progress told about each
     * @return ready to be heard
     * @throws RefusedEntryException if they cannot fairly be heard side by side; the message says why
     */
    public PreparedSounds prepare(List<Stretch> stretches, Progress progress) {
        if (stretches.size() < 2 || stretches.stream().distinct().count() < stretches.size()) {
            throw new RefusedEntryException("listening needs two different sounds at least; choose another one");
        }
        List<Recording> cuts = new ArrayList<>();
        try {
            for (int i = 0; i < stretches.size(); i++) {
                progress.at("reading " + stretches.get(i).words(), i, stretches.size());
                cuts.add(cutStretch.cut(stretches.get(i)));
            }
        } finally {
            progress.end();
        }
        List<Recording> played = EqualLength.of(stretches, cuts);
        MatchedBy by =
                stretches.stream().anyMatch(Stretch::isNote) ? MatchedBy.MOMENTARY_MAXIMUM : MatchedBy.INTEGRATED;
        LoudnessMatch match = LoudnessMatch.of(played, by)
                .orElseThrow(() -> new RefusedEntryException(
                        "one of these sounds is so faint that its loudness cannot be measured; choose another one"));
        List<HeardSound> sounds = IntStream.range(0, stretches.size())
                .mapToObj(i -> new HeardSound(
                        stretches.get(i),
                        match.loudnessLufs().get(i),
                        match.gainsDb().get(i)))
                .toList();
        double seconds = played.get(0).length() / played.get(0).sampleRate().hertz();
        return new PreparedSounds(by, seconds, sounds, played);
    }

    /**
     * Begins a listening.
     *
     * @param prepared the sounds
     * @param seed the order follows from it; chosen by chance, not by a person
     * @param trialCount how many questions
     * @param listener who listens
     * @param playedThrough headphones or loudspeaker
     * @return kept, without an answer yet
     */
    public ListeningSession begin(
            PreparedSounds prepared,
            long seed,
            int trialCount,
            Optional<String> listener,
            Optional<String> playedThrough) {
        NewListening begun = new NewListening(
                clock.instant(),
                seed,
                trialCount,
                prepared.matchedBy(),
                prepared.secondsEach(),
                prepared.sounds(),
                listener,
                playedThrough);
        return new ListeningSession(listenings.begin(begun), begun, List.of());
    }

    /**
     * Every listening.
     *
     * @return oldest first
     */
    public List<ListeningSession> all() {
        return listenings.all();
    }

    /**
     * The next question of a listening.
     *
     * @param session which
     * @return empty if all were answered
     */
    public static Optional<ListeningTrial> next(ListeningSession session) {
        return session.finished()
                ? Optional.empty()
                : Optional.of(TrialPlan.of(
                                session.setUp().seed(),
                                session.setUp().trialCount(),
                                session.setUp().sounds().size())
                        .get(session.answers().size()));
    }

    /**
     * Answers the next question.
     *
     * @param session which
     * @param saidA whether the listener said that X is A
     * @param playCount how many times a sound was played before
     * @return the listening with this answer, which is on the disk
     * @throws RefusedEntryException if all were answered
     */
    public ListeningSession answer(ListeningSession session, boolean saidA, int playCount) {
        ListeningTrial trial = next(session)
                .orElseThrow(() -> new RefusedEntryException("every question of this listening was answered"));
        ListeningAnswer answer =
                new ListeningAnswer(session.answers().size(), trial, saidA, playCount, clock.instant());
        listenings.add(session.id(), answer);
        return show(session.id());
    }

    private ListeningSession show(ListeningId id) {
        return listenings
                .find(id)
                .orElseThrow(() -> new RefusedEntryException("there is no listening " + id + " in this archive"));
    }
}
