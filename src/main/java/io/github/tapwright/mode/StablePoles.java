package io.github.tapwright.mode;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * First guesses by stabilisation: poles that come back, order after order, when the subspace method is asked
 * for ever more of them.
 *
 * <p>A pole of the body is found again at the next order, at nearly the same place; a pole that only describes noise
 * is elsewhere each time. Two poles of neighbouring orders count as the same when they are nearer than a share of
 * their half-power width and decay at nearly the same rate. Source: [VanDerAuweraerPeeters2004].
 */
final class StablePoles {

    private static final int LEAST_RUN = 3;
    private static final double SAME_PLACE_WIDTHS = 0.35;
    private static final double SAME_DECAY_RATIO = 1.5;
    private static final double WIDEST_SIGMA_OF_OMEGA = 0.25;

    private StablePoles() {}

    /**
     * Finds them.
     *
     * @param subspace the signal space of the band
     * @param lowHz lower edge, poles below are left out
     * @param highHz upper edge
     * @return one pole for each run of at least three orders, as it was in the run's last order
     */
    static List<Pole> in(SubspacePoles subspace, double lowHz, double highHz) {
        List<Track> tracks = new ArrayList<>();
        int most = subspace.mostPoles();
        for (int order = 1; order <= most; order++) {
            List<Pole> plausible = subspace.poles(order).stream()
                    .filter(p -> p.dampedHz() > lowHz && p.dampedHz() < highHz)
                    .filter(p -> p.sigma() < WIDEST_SIGMA_OF_OMEGA * p.omega())
                    .toList();
            follow(tracks, plausible, order);
        }
        return tracks.stream()
                .filter(t -> t.length >= Math.min(LEAST_RUN, most))
                .map(t -> t.pole)
                .toList();
    }

    /** Hands each pole of one order to the nearest run it continues, or starts a new one. */
    private static void follow(List<Track> tracks, List<Pole> poles, int order) {
        List<Pole> left = new ArrayList<>(poles);
        List<Track> open = new ArrayList<>(
                tracks.stream().filter(t -> t.lastOrder >= order - 2).toList());
        for (Step step = nearest(open, left); step != null; step = nearest(open, left)) {
            open.remove(step.track);
            step.track.pole = left.remove(step.pole);
            step.track.lastOrder = order;
            step.track.length++;
        }
        left.forEach(pole -> tracks.add(new Track(pole, order)));
    }

    private static @Nullable Step nearest(List<Track> tracks, List<Pole> poles) {
        Step best = null;
        for (Track track : tracks) {
            for (int pole = 0; pole < poles.size(); pole++) {
                double distance = distance(track.pole, poles.get(pole));
                if (distance < 1 && (best == null || distance < best.distance)) {
                    best = new Step(track, pole, distance);
                }
            }
        }
        return best;
    }

    /** A run, and which of the poles goes on with it. */
    private record Step(Track track, int pole, double distance) {}

    /** How far apart two poles are; under 1 they count as the same. */
    private static double distance(Pole a, Pole b) {
        double widths = 2 * Math.abs(a.dampedHz() - b.dampedHz()) / (a.widthHz() + b.widthHz());
        return widths / SAME_PLACE_WIDTHS + Math.abs(Math.log(a.sigma() / b.sigma())) / Math.log(SAME_DECAY_RATIO);
    }

    /** One pole followed from order to order. */
    private static final class Track {

        private Pole pole;
        private int lastOrder;
        private int length = 1;

        Track(Pole pole, int order) {
            this.pole = pole;
            this.lastOrder = order;
        }
    }
}
