package io.github.tapwright.sitting;

import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.NamedResonance;
import java.util.Optional;

/**
 * A resonance under the name that holds: the maker's if there is one, else the suggested one.
 *
 * @param ordinal from 1, lowest frequency first
 * @param found the numbers, the suggested name and its reason
 * @param given the maker's word; empty if the maker said nothing
 * @param name the name that holds; empty if there is none
 * @param reason why this name, or why none
 */
public record ShownResonance(
        int ordinal, NamedResonance found, Optional<GivenName> given, Optional<String> name, String reason) {

    static ShownResonance of(int ordinal, NamedResonance found, Naming.Verdict verdict) {
        return new ShownResonance(ordinal, found, verdict.given(), verdict.name(), verdict.reason());
    }

    /**
     * The known mode of the name that holds.
     *
     * @return the mode, or empty if the name is the maker's own or if there is none
     */
    public Optional<ModeName> mode() {
        return name.flatMap(ModeName::find);
    }
}
