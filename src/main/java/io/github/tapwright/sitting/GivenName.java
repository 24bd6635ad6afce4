package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Entry;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.mode.ModeName;
import java.time.Instant;
import java.util.Optional;

/**
 * The maker's word on what a resonance is; it holds against any suggestion.
 *
 * @param frequencyHz where the resonance lay when it was named, which is how it is found again
 * @param name the name, one line; empty if the maker says that it has none
 * @param givenAt when the maker said so
 */
public record GivenName(double frequencyHz, Optional<String> name, Instant givenAt) {

    /** Brings words and keys of known modes into one form, the words. */
    public GivenName {
        if (!(frequencyHz > 0) || Double.isInfinite(frequencyHz)) {
            throw new RefusedEntryException(
                    "a resonance is named by its frequency in Hz, was " + frequencyHz + "; enter a number above 0");
        }
        name = Entry.line("the name of a resonance", name)
                .map(text -> ModeName.find(text).map(ModeName::words).orElse(text));
    }

    /**
     * The known mode of this name.
     *
     * @return the mode, or empty if the name is the maker's own or if there is none
     */
    public Optional<ModeName> mode() {
        return name.flatMap(ModeName::find);
    }
}
