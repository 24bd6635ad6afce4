package io.github.tapwright.comparison.played;

import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.Comparability;
import io.github.tapwright.comparison.ConditionCheck;
import io.github.tapwright.comparison.Grade;
import io.github.tapwright.comparison.KeptStudy;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.SetUps;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.BenchStudyStore;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingStore;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Studies how far playing again moves figures, and keeps which sittings say so: notes for notes, plucks for plucks. */
public final class StudyPlaying {

    private final SittingStore sittings;
    private final BenchStudyStore studies;
    private final Clock clock;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     * @param studies where studies are kept
     * @param clock what tells the time
     */
    public StudyPlaying(SittingStore sittings, BenchStudyStore studies, Clock clock) {
        this.sittings = sittings;
        this.studies = studies;
        this.clock = clock;
    }

    /**
     * Whether a sitting is for a study of playing.
     *
     * @param id its number
     * @return false for taps
     * @throws RefusedEntryException if there is no such sitting
     */
    public boolean takes(SittingId id) {
        return Procedure.PLAYED.contains(
                new ShowSitting(sittings).outlines(List.of(id)).get(0).procedure());
    }

    /**
     * Evaluates a study.
     *
     * @param ids sittings of notes, or of plucks, on one instrument, set up and played anew for each, all else the same
     * @return what they say
     * @throws RefusedEntryException if there are too few, one is given twice, two hold the same recording, or they may not be
     *     compared in anything
     */
    public PlayingStudy study(List<SittingId> ids) {
        new SetUps(sittings, "set the instrument up, play it and record it anew for each").of(ids);
        List<Sitting> played = ids.stream().map(new ShowSitting(sittings)::show).toList();
        List<Comparability> pairs = new ArrayList<>();
        for (int i = 0; i < played.size(); i++) {
            for (int j = i + 1; j < played.size(); j++) {
                pairs.add(compared(played.get(i), played.get(j)));
            }
        }
        return PlayingStudy.of(played, pairs);
    }

    /** Refuses two of which nothing may be compared; what is refused of levels alone leaves decay times to be studied. */
    private static Comparability compared(Sitting first, Sitting second) {
        Comparability pair = Comparability.ofPlayed(first, second, ShopWindow.USUAL, Optional.empty());
        String procedure = first.latest().findings().procedure().key();
        if (PlayingStudy.quantities(procedure).stream().noneMatch(q -> pair.shows(q.kind()))) {
            throw new RefusedEntryException("sittings " + first.id() + " and " + second.id() + " may not be compared, "
                    + pair.troubles().stream()
                            .filter(c -> c.worst() == Grade.REFUSED)
                            .map(ConditionCheck::words)
                            .collect(Collectors.joining("; "))
                    + "; " + SetUps.LEAVE_OUT);
        }
        return pair;
    }

    /**
     * Evaluates a study and keeps it; from then on it holds for comparisons of its kind.
     *
     * @param ids as in {@link #study}
     * @return what they say
     * @throws RefusedEntryException as there, and if no quantity could be studied
     */
    public PlayingStudy keep(List<SittingId> ids) {
        PlayingStudy study = telling(ids);
        studies.add(ids, clock.instant());
        return study;
    }

    /** A study holds as long as it could be kept. */
    private PlayingStudy telling(List<SittingId> ids) {
        PlayingStudy study = study(ids);
        if (study.scatters().isEmpty()) {
            throw new RefusedEntryException("nothing could be studied, so the study tells nothing: "
                    + study.notStudied().stream()
                            .map(n -> n.quantity().words() + ", " + n.reason())
                            .collect(Collectors.joining("; ")));
        }
        return study;
    }

    /**
     * The study of one kind that was kept last.
     *
     * @param procedure notes or plucks, one of {@link Procedure#PLAYED}
     * @return evaluated anew
     */
    public KeptStudy<PlayingStudy> kept(String procedure) {
        return KeptStudy.of(() -> studies.latest(procedure).map(this::telling));
    }

    /**
     * How far playing again moves figures, as far as anybody knows.
     *
     * @param procedure notes or plucks, one of {@link Procedure#PLAYED}
     * @param said the maker's own figures; empty for those of the study that holds
     * @return these, or the study's, or else {@link SetUpSpread#USUAL}, each with its basis
     */
    public PlayingSpread spread(String procedure, Optional<SetUpSpread> said) {
        return said.map(PlayingSpread::of).orElseGet(() -> spread(said, kept(procedure)));
    }

    /**
     * The same where the study was read already.
     *
     * @param said the maker's own figures
     * @param kept what {@link #kept} gave
     * @return as {@link #spread(String, Optional)}
     */
    public static PlayingSpread spread(Optional<SetUpSpread> said, KeptStudy<PlayingStudy> kept) {
        return said.map(PlayingSpread::of)
                .or(() -> kept.study().flatMap(PlayingStudy::spread))
                .orElseGet(() -> PlayingSpread.of(kept.cautious()));
    }
}
