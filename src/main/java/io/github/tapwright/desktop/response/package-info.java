/**
 * How the body answers: response curves with their bands, resonances with names and uncertainties, strikes that can be
 * set aside, and any other sittings laid over.
 */
@NullMarked
package io.github.tapwright.desktop.response;

import org.jspecify.annotations.NullMarked;
