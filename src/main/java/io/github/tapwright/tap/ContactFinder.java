package io.github.tapwright.tap;

import io.github.tapwright.statistics.Median;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Finds the contacts in a track: where the novelty leaps far above what the room gives.
 *
 * <p>Contacts closer together than 130 ms count as one tap that bounced. The search runs twice: first with
 * a predictor learnt from the whole recording, then with one learnt from the decays just found; this time what leaps
 * must leap out of the {@link FreeRinging} too.
 */
final class ContactFinder {

    private static final double LEAP = 14;
    private static final double BOUNCE_LEAP = 6;
    private static final double CLEAR_LEAP = 10;
    private static final double BOUNCE_ABOVE_ROOM = 7;
    private static final double LONGEST_BOUNCE_SECONDS = 0.13;
    private static final double FAINTEST_OF_STRONGEST = 2.5e-5;
    private static final double FAINTEST_BOUNCE = 0.006;
    private static final double SMALLEST = 1e-13;

    private final double rateHz;
    private final Novelty novelty;
    private final Optional<FreeRinging> ringing;
    private final double[] background;
    private final int backgroundBlock;

    private ContactFinder(double rateHz, Novelty novelty, Optional<FreeRinging> ringing) {
        this.rateHz = rateHz;
        this.novelty = novelty;
        this.ringing = ringing;
        this.backgroundBlock = samples(0.05);
        this.background = background();
    }

    static List<Contact> find(TapTrack track) {
        double[] signal = track.signal();
        double rate = track.decimatedRateHz();
        List<Contact> first = new ContactFinder(rate, Novelty.ofWhole(signal, rate), Optional.empty()).contacts();
        if (first.isEmpty()) {
            return first;
        }
        Optional<FreeRinging> ringing = Optional.of(FreeRinging.of(signal, rate, first));
        return new ContactFinder(rate, Novelty.ofDecays(signal, rate, first), ringing).contacts();
    }

    private int samples(double seconds) {
        return (int) Math.max(1, Math.round(seconds * rateHz));
    }

    /** Quiet level of every 50 ms: a low quantile of the blocks' medians over two seconds either side. */
    private double[] background() {
        int blocks = Math.max(1, novelty.length() / backgroundBlock);
        double[] medians = new double[blocks];
        for (int b = 0; b < blocks; b++) {
            double[] part = novelty.between(b * backgroundBlock, (b + 1) * backgroundBlock);
            medians[b] = part.length == 0 ? 0 : Median.of(part);
        }
        double[] quiet = new double[blocks];
        for (int b = 0; b < blocks; b++) {
            int from = Math.max(0, b - 40);
            int to = Math.min(blocks, b + 41);
            quiet[b] = Median.quantile(Arrays.copyOfRange(medians, from, to), 0.1);
        }
        return quiet;
    }

    private double backgroundAt(int n) {
        return Math.max(SMALLEST, background[Math.min(background.length - 1, n / backgroundBlock)]);
    }

    private List<Contact> contacts() {
        List<Integer> leaps = leaps();
        double strongest = leaps.stream().mapToDouble(novelty::at).max().orElse(0);
        List<Contact> contacts = new ArrayList<>();
        for (int i = 0; i < leaps.size(); ) {
            if (novelty.at(leaps.get(i)) <= LEAP * backgroundAt(leaps.get(i))) {
                i++;
                continue;
            }
            int end = i;
            while (end < leaps.size() && leaps.get(end) - leaps.get(i) <= samples(LONGEST_BOUNCE_SECONDS)) {
                end++;
            }
            List<Integer> cluster = leaps.subList(i, end);
            double top = cluster.stream().mapToDouble(novelty::at).max().orElseThrow();
            if (top >= FAINTEST_OF_STRONGEST * strongest) {
                contacts.add(contact(cluster, top));
            }
            i = end;
        }
        return contacts;
    }

    /** Samples at which the novelty is highest within 6 ms and far above the room and the moment before. */
    private List<Integer> leaps() {
        List<Integer> leaps = new ArrayList<>();
        int reach = samples(0.006);
        for (int n = 0; n < novelty.length(); n++) {
            double here = novelty.at(n);
            if (here > BOUNCE_ABOVE_ROOM * backgroundAt(n) && isLargest(n, reach) && leaps(n, leaps.isEmpty())) {
                leaps.add(n);
            }
        }
        return leaps;
    }

    private boolean isLargest(int n, int reach) {
        for (int m = Math.max(0, n - reach); m <= Math.min(novelty.length() - 1, n + reach); m++) {
            if (novelty.at(m) > novelty.at(n) || (novelty.at(m) == novelty.at(n) && m < n)) {
                return false;
            }
        }
        return true;
    }

    /** Both witnesses must agree, unless nothing rings yet; a clear leap out of the free ringing is enough. */
    private boolean leaps(int n, boolean first) {
        double outOfRinging = ringing.map(r -> r.leapAt(n)).orElse(CLEAR_LEAP);
        return outOfRinging > CLEAR_LEAP || ((first || outOfRinging > BOUNCE_LEAP) && leapsOutOf(n, novelty.at(n)));
    }

    private boolean leapsOutOf(int n, double here) {
        if (n < samples(0.014)) {
            return true; // the file starts on the hit
        }
        double[] before = novelty.between(n - samples(0.014), n - samples(0.005));
        return here > BOUNCE_LEAP * Median.of(before);
    }

    private Contact contact(List<Integer> cluster, double top) {
        int first = 0;
        while (novelty.at(cluster.get(first)) < FAINTEST_BOUNCE * 5 * top) {
            first++;
        }
        int n = cluster.get(first);
        double here = novelty.at(n);
        List<Contact.Later> later = new ArrayList<>();
        for (int m : cluster.subList(first + 1, cluster.size())) {
            if (novelty.at(m) > FAINTEST_BOUNCE * here) {
                later.add(new Contact.Later((m - n) / rateHz, 10 * Math.log10(novelty.at(m) / here)));
            }
        }
        return new Contact(onset(n, here) / rateHz, decayStart(n, here) / rateHz, later);
    }

    private double onset(int n, double here) {
        int m = n;
        while (m > 0 && n - m < samples(0.008) && novelty.at(m - 1) > 0.05 * here) {
            m--;
        }
        return Math.min(n, m + novelty.halfWindow());
    }

    private double decayStart(int n, double here) {
        int last = n;
        int limit = Math.min(novelty.length() - 1, n + samples(0.012));
        for (int m = n; m <= limit; m++) {
            if (novelty.at(m) > 0.04 * here) {
                last = m;
            }
        }
        return last + 1;
    }
}
