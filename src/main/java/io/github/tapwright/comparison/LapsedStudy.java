package io.github.tapwright.comparison;

/**
 * A study kept that holds no longer, because its sittings, corrected or analysed anew since, do not go together or tell nothing.
 *
 * @param procedure what its sittings were made for, a {@link io.github.tapwright.sitting.Procedure#key()}
 * @param reason what is wrong with them, and what would help
 */
public record LapsedStudy(String procedure, String reason) {}
