/**
 * Makes the demo recordings: an invented workshop, its invented guitars, and a physical model of their sound.
 *
 * <p>Equations, parameters and every assumption are in docs/methods/demo-model.md. Nothing here is measured;
 * the truth behind each recording is written beside it.
 */
@NullMarked
package io.github.tapwright.demo;

import org.jspecify.annotations.NullMarked;
