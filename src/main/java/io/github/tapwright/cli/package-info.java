/**
 * The command line: one class a command, each of which parses, calls a use case and prints.
 *
 * <p>{@link io.github.tapwright.cli.Bench} is the one place that knows which archive and which sound files the
 * commands work with. Results go to standard output, everything else to standard error.
 */
@NullMarked
package io.github.tapwright.cli;

import org.jspecify.annotations.NullMarked;
