/** The cli package. */
@NullMarked
package io.github.tapwright.cli;

import org.jspecify.annotations.NullMarked;
