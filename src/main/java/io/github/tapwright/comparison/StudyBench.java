package io.github.tapwright.comparison;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.BenchStudyStore;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.SittingStore;
import java.time.Clock;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Studies how far setting up again moves figures, and keeps which sittings say so. */
public final class StudyBench {

    /** What the sittings of a study may be made for. */
    public static final List<String> KINDS = Stream.concat(Stream.of(Procedure.BodyTaps.KEY), Procedure.PLAYED.stream())
            .toList();

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
    public StudyBench(SittingStore sittings, BenchStudyStore studies, Clock clock) {
        this.sittings = sittings;
        this.studies = studies;
        this.clock = clock;
    }

    /**
     * Evaluates a study.
     *
     * @param ids sittings of taps on one instrument, set up anew for each, all else the same
     * @return what they say
     * @throws RefusedEntryException if there are too few, one is given twice, two hold the same recording, or they may not be
     *     compared
     */
    public BenchStudy study(List<SittingId> ids) {
        List<SittingOutline> setUps =
                new SetUps(sittings, "take the instrument down, put it up again and record anew for each").of(ids);
        setUps.forEach(other -> refuseUnlike(setUps.get(0), other));
        return BenchStudy.of(setUps);
    }

    /**
     * Evaluates a study and keeps it; from then on it holds for comparisons.
     *
     * @param ids as in {@link #study}
     * @return what they say
     * @throws RefusedEntryException as there, and if nothing was found in all set-ups
     */
    public BenchStudy keep(List<SittingId> ids) {
        BenchStudy study = telling(ids);
        studies.add(ids, clock.instant());
        return study;
    }

    /** A study holds as long as it could be kept. */
    private BenchStudy telling(List<SittingId> ids) {
        BenchStudy study = study(ids);
        if (study.spread().isEmpty()) {
            throw new RefusedEntryException(
                    "no resonance was found in every set-up, so the study tells nothing; look at the sittings one by one");
        }
        return study;
    }

    /**
     * Forgets the studies of some kinds: from then on none of these holds, until another is kept. Sittings and former studies stay, and
     * studies of other kinds hold on.
     *
     * @param kinds what their sittings were made for, of {@link #KINDS}
     * @return what each study forgotten rests on, by its kind
     * @throws RefusedEntryException if none of them is kept
     */
    public Map<String, List<SittingId>> forget(Collection<String> kinds) {
        Map<String, List<SittingId>> others = rested();
        Map<String, List<SittingId>> forgotten = new LinkedHashMap<>();
        kinds.forEach(kind -> Optional.ofNullable(others.remove(kind)).ifPresent(ids -> forgotten.put(kind, ids)));
        if (forgotten.isEmpty()) {
            String which = kinds.containsAll(KINDS) ? "" : " of " + String.join(" or ", kinds);
            throw new RefusedEntryException("no study" + which + " is kept, so there is nothing to forget");
        }
        holdOnly(others);
        return forgotten;
    }

    private void holdOnly(Map<String, List<SittingId>> held) {
        addAll(Stream.concat(Stream.of(List.<SittingId>of()), held.values().stream())
                .toList());
    }

    /**
     * What the studies that hold rest on.
     *
     * @return the sittings of each, by what they were made for, whether or not they still go together
     */
    public Map<String, List<SittingId>> rested() {
        Map<String, List<SittingId>> held = new LinkedHashMap<>();
        KINDS.forEach(kind -> studies.latest(kind).ifPresent(ids -> held.put(kind, ids)));
        return held;
    }

    /**
     * Lets studies hold again that were forgotten, but for kinds of which a newer one was kept meanwhile.
     *
     * @param forgotten what {@link #forget} gave
     */
    public void takeBack(Map<String, List<SittingId>> forgotten) {
        Map<String, List<SittingId>> newer = rested();
        addAll(forgotten.entrySet().stream()
                .filter(e -> !newer.containsKey(e.getKey()))
                .map(Map.Entry::getValue)
                .toList());
    }

    /**
     * Takes back that a study was kept: of its kind the one that held before does again, or none. Studies of other kinds stay as they are, and
     * nothing changes if the study no longer holds.
     *
     * @param kept what it rests on
     * @param before what {@link #rested} gave before it was kept
     */
    public void takeBackKept(List<SittingId> kept, Map<String, List<SittingId>> before) {
        Map<String, List<SittingId>> now = rested();
        KINDS.stream().filter(kind -> kept.equals(now.get(kind))).findFirst().ifPresent(kind -> {
            List<SittingId> former = before.get(kind);
            if (former == null) {
                now.remove(kind);
                holdOnly(now);
            } else {
                addAll(List.of(former));
            }
        });
    }

    private void addAll(List<List<SittingId>> all) {
        if (!all.isEmpty()) {
            studies.addAll(all, clock.instant());
        }
    }

    /**
     * The study that was kept last.
     *
     * @return evaluated anew
     */
    public KeptStudy<BenchStudy> kept() {
        return KeptStudy.of(() -> studies.latest(Procedure.BodyTaps.KEY).map(this::telling));
    }

    /**
     * How far setting up again moves figures, as far as anybody knows.
     *
     * @param said the maker's own figures; empty for those of the study that holds
     * @return these, or the study's, or else {@link SetUpSpread#USUAL}; its basis says if a study was kept that no longer
     *     holds
     */
    public SetUpSpread spread(Optional<SetUpSpread> said) {
        return said.orElseGet(() -> spread(said, kept()));
    }

    /**
     * The same where the study was read already.
     *
     * @param said the maker's own figures
     * @param kept what {@link #kept} gave
     * @return as {@link #spread(Optional)}
     */
    public static SetUpSpread spread(Optional<SetUpSpread> said, KeptStudy<BenchStudy> kept) {
        return said.or(() -> kept.study().flatMap(BenchStudy::spread)).orElseGet(kept::cautious);
    }

    private static void refuseUnlike(SittingOutline first, SittingOutline other) {
        if (!other.procedure().equals(Procedure.BodyTaps.KEY)) {
            throw new RefusedEntryException(
                    "sitting " + other.id() + " is for " + other.procedure() + "; a study takes sittings of taps");
        }
        BodyConditions.check(first, other).stream()
                .filter(c -> c.worst() == Grade.REFUSED)
                .findFirst()
                .ifPresent(c -> {
                    throw new RefusedEntryException(
                            "sittings " + first.id() + " and " + other.id() + " may not be compared, " + c.words());
                });
    }
}
