package io.github.tapwright.comparison.played;

import io.github.tapwright.comparison.Comparability;
import io.github.tapwright.comparison.ConditionCheck;
import io.github.tapwright.comparison.Grade;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingOutline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How far playing again moves figures, from sittings of notes or of plucks of one instrument, set up and played anew for each.
 *
 * @param procedure what the sittings were made for, a {@link Procedure#key()}
 * @param sittings what it rests on, at least {@value io.github.tapwright.comparison.BenchStudy#FEWEST}
 * @param scatters one for each quantity that could be studied
 * @param notStudied the other quantities, for which assumed figures go on to hold
 */
public record PlayingStudy(
        String procedure, List<SittingOutline> sittings, List<PlayedScatter> scatters, List<NotStudied> notStudied) {

    /** Keeps copies of the lists. */
    public PlayingStudy {
        sittings = List.copyOf(sittings);
        scatters = List.copyOf(scatters);
        notStudied = List.copyOf(notStudied);
    }

    /**
     * A quantity that could not be studied.
     *
     * @param quantity which
     * @param reason why not, and what would help
     */
    public record NotStudied(PlayedQuantity quantity, String reason) {}

    /** What is asked of each kind of sitting; pitch is not, as the player tunes. */
    static List<PlayedQuantity> quantities(String procedure) {
        return procedure.equals(Procedure.NoteRun.KEY)
                ? List.of(PlayedQuantity.EARLY_DECAY, PlayedQuantity.DECAY_TIME, PlayedQuantity.LEVEL)
                : List.of(PlayedQuantity.LEVEL, PlayedQuantity.LOUDNESS);
    }

    /**
     * Studies sittings that may be compared.
     *
     * @param sittings all of one kind
     * @param pairs how each goes with each other
     */
    static PlayingStudy of(List<Sitting> sittings, List<Comparability> pairs) {
        String procedure = sittings.get(0).latest().findings().procedure().key();
        List<PlayedScatter> scatters = new ArrayList<>();
        List<NotStudied> notStudied = new ArrayList<>();
        for (PlayedQuantity quantity : quantities(procedure)) {
            Optional<String> refusal = refusal(quantity.kind(), pairs);
            Optional<SittingMeans> means = refusal.isPresent() ? Optional.empty() : means(quantity, sittings);
            means.ifPresentOrElse(
                    m -> scatters.add(PlayedScatter.of(quantity, m)),
                    () -> notStudied.add(new NotStudied(quantity, refusal.orElse(tooFew(procedure)))));
        }
        return new PlayingStudy(
                procedure, sittings.stream().map(SittingOutline::of).toList(), scatters, notStudied);
    }

    private static Optional<SittingMeans> means(PlayedQuantity quantity, List<Sitting> sittings) {
        List<Findings> found = sittings.stream().map(s -> s.latest().findings()).toList();
        return found.get(0).notes().isPresent()
                ? SittingMeans.ofNotes(quantity, all(found, Findings::notes))
                : SittingMeans.ofPlucks(quantity, all(found, Findings::plucks));
    }

    private static <T> List<T> all(List<Findings> found, Function<Findings, Optional<T>> of) {
        return found.stream().flatMap(f -> of.apply(f).stream()).toList();
    }

    private static String tooFew(String procedure) {
        return procedure.equals(Procedure.NoteRun.KEY)
                ? "too few places have it in every sitting; play the same places in each"
                : "no string has two plucks with it in every sitting; pluck each string several times in each";
    }

    private static Optional<String> refusal(Quantity kind, List<Comparability> pairs) {
        return pairs.stream()
                .flatMap(p -> p.checks().stream())
                .filter(c -> c.grade(kind) == Grade.REFUSED)
                .findFirst()
                .map(ConditionCheck::words);
    }

    /**
     * What it gives for comparisons.
     *
     * @return empty if no quantity could be studied
     */
    public Optional<PlayingSpread> spread() {
        return scatters.isEmpty() ? Optional.empty() : Optional.of(known());
    }

    /**
     * What it says of one quantity.
     *
     * @param quantity which
     * @return empty if it could not be studied
     */
    public Optional<PlayedScatter> of(PlayedQuantity quantity) {
        return scatters.stream().filter(s -> s.quantity() == quantity).findFirst();
    }

    /**
     * What it gives, as people read it.
     *
     * @return such as "early decays by 2.1 %, decay times by 3 % and levels by 0.4 dB (measured on this bench)", with what is assumed besides
     */
    public String words() {
        return known().words(procedure);
    }

    private PlayingSpread known() {
        return new PlayingSpread(
                SetUpSpread.USUAL,
                scatters.stream().collect(Collectors.toMap(PlayedScatter::quantity, PlayedScatter::counted)));
    }
}
