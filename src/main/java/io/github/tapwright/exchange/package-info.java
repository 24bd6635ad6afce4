/**
 * Results on their way to other programs: JSON for scripts, CSV for spreadsheets.
 *
 * <p>A table is a list of {@link io.github.tapwright.exchange.Field}s, and both formats are written from the same
 * list, so that a column and a key of one name always mean the same. Names are stable, lower case, and end in
 * their unit. What is unknown is null in JSON and an empty cell in CSV; numbers are never "NaN".
 */
@NullMarked
package io.github.tapwright.exchange;

import org.jspecify.annotations.NullMarked;
