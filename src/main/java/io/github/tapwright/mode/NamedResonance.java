package io.github.tapwright.mode;

import java.util.Optional;

/**
 * A resonance with the name the rules suggest for it.
 *
 * @param resonance the numbers
 * @param name the suggestion, empty where the rules are not sure
 * @param reason why this name, or why none
 */
public record NamedResonance(Resonance resonance, Optional<ModeName> name, String reason) {}
