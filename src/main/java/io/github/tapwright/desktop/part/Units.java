package io.github.tapwright.desktop.part;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.statistics.Figures;
import java.util.Optional;

/** How the maker writes temperatures; the archive keeps degrees Celsius. */
public enum Units {
    /** Degrees Celsius. */
    CELSIUS("°C"),
    /** Degrees Fahrenheit: F = 1.8·C + 32. */
    FAHRENHEIT("°F");

    private final String sign;

    Units(String sign) {
        this.sign = sign;
    }

    /**
     * The unit's sign.
     *
     * @return "°C" or "°F"
     */
    public String sign() {
        return sign;
    }

    /**
     * Writes a temperature.
     *
     * @param celsius in °C
     * @return the figure in this unit, to a tenth, without the sign
     */
    public String text(double celsius) {
        double figure = this == CELSIUS ? celsius : 1.8 * celsius + 32;
        return Figures.plain(Math.round(10 * figure) / 10.0);
    }

    /**
     * Reads a temperature the maker typed.
     *
     * @param typed a figure in this unit, or nothing
     * @return in °C; empty if nothing was typed
     * @throws RefusedEntryException if it is no figure
     */
    public Optional<Double> read(String typed) {
        return figure("temperature", typed).map(f -> this == CELSIUS ? f : (f - 32) / 1.8);
    }

    /**
     * Reads a figure the maker typed, with a point or a comma.
     *
     * @param what the entry's name
     * @param typed the text
     * @return the figure; empty if nothing was typed
     * @throws RefusedEntryException if it is no figure
     */
    public static Optional<Double> figure(String what, String typed) {
        String text = typed.strip().replace(',', '.').replace('−', '-');
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Double.valueOf(text)).filter(Double::isFinite).or(() -> {
                throw new NumberFormatException(text);
            });
        } catch (NumberFormatException e) {
            throw new RefusedEntryException(what + ": \"" + typed + "\" is no figure; type a number such as 21.5");
        }
    }
}
