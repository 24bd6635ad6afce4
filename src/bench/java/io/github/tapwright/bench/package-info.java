/** How long the analysis takes, measured with JMH; see DEVELOPERS.md for the command. */
@NullMarked
package io.github.tapwright.bench;

import org.jspecify.annotations.NullMarked;
