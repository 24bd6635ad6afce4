/**
 * The maker's nouns: an instrument, how it is built, how far it has come and what strings it wears.
 *
 * <p>Only the shop number and the kind are asked for. Everything else may be unknown and then says so: an
 * empty {@link java.util.Optional} means that nobody wrote it down, never zero or none. Figures outside what a
 * guitar can have are refused with a {@link io.github.tapwright.instrument.RefusedEntryException}.
 */
@NullMarked
package io.github.tapwright.instrument;

import org.jspecify.annotations.NullMarked;
