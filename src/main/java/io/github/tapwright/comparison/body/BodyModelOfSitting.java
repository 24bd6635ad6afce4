package io.github.tapwright.comparison.body;

import io.github.tapwright.comparison.AirConditions;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.body.BodyModel;
import io.github.tapwright.mode.body.BodyReadings;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.InstrumentStore;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingStore;
import io.github.tapwright.statistics.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Fits the coupled body to a sitting and its companions. */
public final class BodyModelOfSitting {

    /** What a balance of the better kind is good for; common practice, no source. */
    private static final double BALANCE_U_KILOGRAMS = 0.00005;

    private final SittingStore sittings;
    private final InstrumentStore instruments;
    private final StudyBench studies;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     * @param instruments where instruments are kept
     * @param studies what knows how far setting up again moves figures
     */
    public BodyModelOfSitting(SittingStore sittings, InstrumentStore instruments, StudyBench studies) {
        this.sittings = sittings;
        this.instruments = instruments;
        this.studies = studies;
    }

    /**
     * Fits.
     *
     * @param request which body
     * @return the body, as far as its sittings tell it
     * @throws RefusedEntryException if a sitting does not exist, is of another kind, or lacks a named resonance
     */
    public FittedBody fit(BodyRequest request) {
        Sitting open = Companions.open(sittings, request.open());
        Companions companions = new Companions(sittings, open);
        Optional<Sitting> covered = companions.covered(request.covered());
        Optional<Sitting> loaded = companions.loaded(request.loaded());
        refuseCoveredMassAlone(covered, loaded);
        SetUpSpread spread = studies.spread(request.spread());
        List<Sitting> all = Stream.of(Optional.of(open), covered, loaded)
                .flatMap(Optional::stream)
                .toList();
        boolean withBack = withBack(all, spread, request.backDemanded());
        BodyReadings readings = new BodyReadings(
                new SittingResonances(open, spread).readings(withBack),
                covered.map(s -> new SittingResonances(s, spread).readings(withBack)),
                loaded.map(s -> load(s, new SittingResonances(s, spread).readings(withBack))),
                BoxMeasures.of(request.box(), instruments.find(open.instrument()), open));
        BodyModel model = BodyModel.of(readings, BodyModel.USUAL);
        return new FittedBody(
                open,
                covered,
                loaded,
                spread,
                model,
                Stream.concat(remarks(all, withBack).stream(), companions.passedOver().stream())
                        .toList(),
                request.change().map(c -> new FittedBody.WhatIf(c, model.predict(c))));
    }

    private static void refuseCoveredMassAlone(Optional<Sitting> covered, Optional<Sitting> loaded) {
        if (covered.isEmpty() && loaded.filter(Companions::isCovered).isPresent()) {
            throw new RefusedEntryException("sitting " + loaded.get().id()
                    + " has a mass and the hole covered; that needs a covered sitting without the mass, or a mass with"
                    + " the hole open");
        }
    }

    private static boolean withBack(List<Sitting> all, SetUpSpread spread, boolean demanded) {
        Optional<Sitting> without = all.stream()
                .filter(s -> !new SittingResonances(s, spread).hasBack())
                .findFirst();
        if (demanded && without.isPresent()) {
            throw new RefusedEntryException("sitting " + without.get().id()
                    + " has no main back; name it with sitting name, tap the back itself, or leave the back out");
        }
        return without.isEmpty();
    }

    private static BodyReadings.Load load(Sitting sitting, List<Estimate> hz) {
        AddedMass mass = sitting.conditions().addedMass().orElseThrow();
        return new BodyReadings.Load(
                Estimate.of(mass.grams() / 1000, BALANCE_U_KILOGRAMS), Companions.isCovered(sitting), hz);
    }

    private static List<String> remarks(List<Sitting> all, boolean withBack) {
        List<String> remarks = new ArrayList<>();
        if (!withBack) {
            remarks.add(
                    "the back is taken as held still, because the main back was not found in every sitting; a live back"
                            + " lowers what passes for the air's frequency by a few per cent");
        } else {
            remarks.add("top and back cannot be told apart by these figures alone; the lower one is taken for the top");
        }
        if (all.get(0).conditions().hole() == HoleState.UNKNOWN) {
            remarks.add("nobody wrote down whether the hole of sitting "
                    + all.get(0).id() + " was open; it is taken as open");
        }
        if (airsLieFarApart(all)) {
            remarks.add(
                    "the sittings lie more than 5 points of humidity apart, which moves the wood; measure them on one day");
        }
        return remarks;
    }

    private static boolean airsLieFarApart(List<Sitting> all) {
        double[] percent = all.stream()
                .flatMap(s -> s.conditions().air().relativeHumidityPercent().stream())
                .mapToDouble(h -> h)
                .sorted()
                .toArray();
        return percent.length > 1 && AirConditions.areFarApart(percent[0], percent[percent.length - 1]);
    }
}
