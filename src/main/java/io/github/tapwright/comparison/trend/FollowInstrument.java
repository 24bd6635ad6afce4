package io.github.tapwright.comparison.trend;

import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.BenchKnowledge;
import io.github.tapwright.comparison.KnownScatter;
import io.github.tapwright.comparison.SensitivityLearning;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.comparison.played.PlayedQuantity;
import io.github.tapwright.comparison.played.StudyPlaying;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.InstrumentStore;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.ShowInstrument;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.SittingStore;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Follows an instrument through all its sittings. */
public final class FollowInstrument {

    private final InstrumentStore instruments;
    private final SittingStore sittings;
    private final StudyBench studies;
    private final StudyPlaying playing;
    private final ZoneId zone;

    /**
     * Joins the use case with what it needs.
     *
     * @param instruments where instruments are kept
     * @param sittings where sittings are kept
     * @param studies what knows how far setting up again moves figures
     * @param playing what knows how far plucking again moves levels
     * @param zone where the workshop is
     */
    public FollowInstrument(
            InstrumentStore instruments, SittingStore sittings, StudyBench studies, StudyPlaying playing, ZoneId zone) {
        this.instruments = instruments;
        this.sittings = sittings;
        this.studies = studies;
        this.playing = playing;
        this.zone = zone;
    }

    /**
     * The history of an instrument.
     *
     * @param instrument whose
     * @param spread how far setting up again moves figures; empty for the studies that hold, or cautious figures
     * @param window the humidity the shop keeps
     * @return its history
     * @throws RefusedEntryException if there is no such instrument
     */
    public History follow(ShopNumber instrument, Optional<SetUpSpread> spread, ShopWindow window) {
        new ShowInstrument(instruments).show(instrument);
        List<SittingOutline> all = sittings.outlines(Optional.of(instrument));
        BenchKnowledge bench = new BenchKnowledge(
                studies.spread(spread), plucks(all, spread), window, new SensitivityLearning(sittings).of(instrument));
        return History.of(instrument, all, sittings.sharing(), bench, zone);
    }

    /** An instrument never plucked needs no study of plucks read and worked out anew. */
    private KnownScatter plucks(List<SittingOutline> all, Optional<SetUpSpread> said) {
        boolean plucked = all.stream().anyMatch(s -> s.plucks().isPresent());
        return plucked
                ? playing.spread(Procedure.OpenPlucks.KEY, said).of(PlayedQuantity.LEVEL)
                : SetUpSpread.USUAL.level();
    }
}
