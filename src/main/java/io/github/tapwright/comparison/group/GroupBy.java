package io.github.tapwright.comparison.group;

import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.Keyed;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** By what instruments are put into groups. */
public enum GroupBy implements Keyed {
    /** How the top is made. */
    CONSTRUCTION("construction", "construction of the top"),
    /** What sort of guitar it is. */
    KIND("kind", "kind of instrument");

    private final String key;
    private final String words;

    GroupBy(String key, String words) {
        this.key = key;
        this.words = words;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String words() {
        return words;
    }

    /**
     * The group an instrument falls into.
     *
     * @param instrument any
     * @return its group in the plural, such as "solid tops"; empty if nobody wrote it down
     */
    public Optional<String> groupOf(Instrument instrument) {
        return switch (this) {
            case CONSTRUCTION -> instrument.construction().kind().map(GroupBy::tops);
            case KIND -> Optional.of(guitars(instrument.kind()));
        };
    }

    /**
     * Every group there can be, the usual one first.
     *
     * @return plurals, such as "solid tops"
     */
    public List<String> groups() {
        return switch (this) {
            case CONSTRUCTION ->
                Arrays.stream(ConstructionKind.values()).map(GroupBy::tops).toList();
            case KIND ->
                Arrays.stream(InstrumentKind.values()).map(GroupBy::guitars).toList();
        };
    }

    private static String tops(ConstructionKind kind) {
        return kind == ConstructionKind.OTHER ? "tops of other construction" : kind.words() + " tops";
    }

    private static String guitars(InstrumentKind kind) {
        return kind.words() + "s";
    }
}
