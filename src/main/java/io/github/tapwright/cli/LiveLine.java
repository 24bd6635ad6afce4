package io.github.tapwright.cli;

import io.github.tapwright.sitting.live.CaptureNotes;
import io.github.tapwright.sitting.live.LevelNow;
import io.github.tapwright.sitting.live.LiveView;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.tap.Strike;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A running recording on one line that is written over, with a line of its own for each verdict and each hint. */
final class LiveLine {

    private static final String BACK_TO_AN_EMPTY_LINE = "\r\u001b[K";
    private static final double QUIETEST_DBFS = -60;
    private static final int BAR = 20;

    private final Terminal terminal;
    private final CaptureNotes notes;
    private final Set<String> hinted = new HashSet<>();
    private int strikesShown;

    LiveLine(Terminal terminal, CaptureNotes notes) {
        this.terminal = terminal;
        this.notes = notes;
        if (terminal.isWatched()) {
            terminal.note(
                    "recording from '" + notes.device() + "', " + notes.format().text() + "; Enter stops");
        }
    }

    void show(LiveView view) {
        if (!terminal.isWatched()) {
            return;
        }
        List<Strike> strikes = view.taps().strikes();
        for (; strikesShown < strikes.size(); strikesShown++) {
            above(verdict(strikesShown + 1, strikes.get(strikesShown)));
        }
        view.level().hints().stream().filter(hinted::add).forEach(this::above);
        view.taps().notes().stream().filter(hinted::add).forEach(this::above);
        terminal.err().print(BACK_TO_AN_EMPTY_LINE + now(view));
        terminal.err().flush();
    }

    private void above(String line) {
        terminal.err().println(BACK_TO_AN_EMPTY_LINE + line);
    }

    private static String verdict(int number, Strike strike) {
        return String.format(
                Locale.ROOT,
                "strike %d at %.1f s, %s dBFS: %s",
                number,
                strike.onsetSeconds(),
                Figures.text(strike.peakDbfs(), 0),
                strike.used() ? "used" : "rejected: " + strike.reasons());
    }

    private String now(LiveView view) {
        LevelNow level = view.level();
        double peak = level.peakDbfs().orElse(QUIETEST_DBFS);
        int filled = (int) Math.round(BAR * Math.max(0, Math.min(1, 1 - peak / QUIETEST_DBFS)));
        String strikes = view.taps().strikes().isEmpty()
                ? ""
                : ", " + view.taps().usedCount() + " of "
                        + Figures.count(view.taps().strikes().size(), "strike") + " can be used";
        return String.format(
                Locale.ROOT,
                "%5.1f s [%s%s] %s%s%s",
                view.seconds(),
                "#".repeat(filled),
                "-".repeat(BAR - filled),
                level.peakDbfs().map(p -> Figures.text(p, 0) + " dBFS").orElse("silent"),
                level.clipped() ? " CLIPPED" : "",
                strikes);
    }

    /** Says what everybody must know, watched or not. */
    void end(LiveView last) {
        if (terminal.isWatched()) {
            terminal.err().print(BACK_TO_AN_EMPTY_LINE);
        }
        last.losses().forEach(l -> terminal.note(l.text(notes.format())));
        last.trouble().ifPresent(terminal::note);
    }
}
