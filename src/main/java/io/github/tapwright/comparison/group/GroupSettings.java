package io.github.tapwright.comparison.group;

import io.github.tapwright.comparison.StageClass;

/**
 * What is asked about groups.
 *
 * @param by by what instruments are put into groups
 * @param stage which sittings count
 */
public record GroupSettings(GroupBy by, StageClass stage) {}
