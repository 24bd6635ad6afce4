package io.github.tapwright.comparison.listening;

import io.github.tapwright.sitting.Stretch;
import io.github.tapwright.sitting.listening.HeardSound;
import io.github.tapwright.sitting.listening.ListeningAnswer;
import io.github.tapwright.sitting.listening.ListeningSession;
import io.github.tapwright.statistics.Figures;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a listening says, and what it does not, in words. */
public final class ListeningWords {

    private ListeningWords() {}

    /**
     * The result on one line.
     *
     * @param session finished or not
     * @return "told apart", "cannot tell" or how far it is
     */
    public static String brief(ListeningSession session) {
        if (!session.finished()) {
            return "not finished: " + session.answers().size() + " of "
                    + session.setUp().trialCount() + " answered";
        }
        ListeningVerdict v = ListeningVerdict.of(session);
        return (v.toldApart() ? "told apart: " : "cannot tell: ") + v.right() + " of " + v.count() + " right";
    }

    /**
     * The result.
     *
     * @param session a finished one
     * @param all every listening of the archive, this one among them
     * @return sentences, each a paragraph
     */
    public static List<String> result(ListeningSession session, List<ListeningSession> all) {
        ListeningVerdict v = ListeningVerdict.of(session);
        List<String> words = new ArrayList<>();
        words.add((v.toldApart() ? "Told apart: " : "Cannot tell: ") + v.right() + " of " + v.count()
                + " answers are right. Guessing alone brings " + v.right() + " or more right in "
                + percent(v.chance()) + " of such listenings; " + v.needed() + " were needed for "
                + percent(ListeningVerdict.LEVEL) + " or less.");
        if (!v.toldApart()) {
            words.add("This does not prove that the sounds are alike. A listener who hears enough to be right three"
                    + " times out of four reaches " + v.needed() + " of " + v.count() + " in "
                    + percent(v.chanceToProve()) + " of listenings only; a small difference is easily missed.");
        }
        if (session.setUp().sounds().size() > 2) {
            words.add(byPair(session));
        }
        List<ListeningSession> same = all.stream()
                .filter(s -> s.finished() && stretches(s).equals(stretches(session)))
                .toList();
        if (same.size() > 1) {
            words.add("There are " + same.size() + " finished listenings with these sounds, told apart in "
                    + same.stream()
                            .filter(s -> ListeningVerdict.of(s).toldApart())
                            .count()
                    + ". One in twenty succeeds by luck, so count them all, not the best.");
        }
        return words;
    }

    /**
     * What a listening does not say.
     *
     * @param session finished or not
     * @return sentences, each a point of a list
     */
    public static List<String> limits(ListeningSession session) {
        return List.of(
                "It speaks of one listener on one day"
                        + session.setUp().listener().map(l -> " (" + l + ")").orElse("")
                        + ", through "
                        + session.setUp().playedThrough().orElse("headphones or a loudspeaker nobody wrote down") + ".",
                "It speaks of these recordings: one room, one place of the microphone, one player's plucks. Two plucks"
                        + " of one guitar differ too; for guitars, listen to several notes of each.",
                "It says whether the sounds differ, not which is better, and not by how much.",
                "They were matched in loudness (" + session.setUp().matchedBy().words()
                        + ", louder ones turned down), so that a difference in loudness was taken away on purpose.");
    }

    /**
     * How the sounds were matched.
     *
     * @param session which
     * @return one line for each sound
     */
    public static List<String> matching(ListeningSession session) {
        return session.setUp().sounds().stream()
                .map(s -> s.stretch().words() + ": " + Figures.text(s.loudnessLufs(), 1) + " LUFS, turned down by "
                        + Figures.text(Math.abs(s.gainDb()), 1) + " dB")
                .toList();
    }

    private static Set<Stretch> stretches(ListeningSession session) {
        return session.setUp().sounds().stream().map(HeardSound::stretch).collect(Collectors.toSet());
    }

    private static String byPair(ListeningSession session) {
        TreeMap<String, List<ListeningAnswer>> pairs = session.answers().stream()
                .collect(Collectors.groupingBy(a -> pair(a), TreeMap::new, Collectors.toList()));
        return "By pair, each too few to judge alone: "
                + pairs.entrySet().stream()
                        .map(e -> "sounds " + e.getKey() + ": "
                                + e.getValue().stream()
                                        .filter(ListeningAnswer::right)
                                        .count()
                                + " of " + e.getValue().size())
                        .collect(Collectors.joining("; "))
                + ". The verdict is on all of them together.";
    }

    private static String pair(ListeningAnswer answer) {
        int a = answer.trial().a() + 1;
        int b = answer.trial().b() + 1;
        return Math.min(a, b) + " and " + Math.max(a, b);
    }

    /** Two figures, since exact small probabilities matter here and long ones do not. */
    private static String percent(double share) {
        return new BigDecimal(100 * share)
                        .round(new MathContext(2))
                        .stripTrailingZeros()
                        .toPlainString()
                + " %";
    }
}
