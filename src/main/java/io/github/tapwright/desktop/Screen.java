package io.github.tapwright.desktop;

import javafx.scene.Node;

/**
 * One screen as the shell holds it.
 *
 * @param name on its button
 * @param node what is shown
 * @param shown runs each time it comes to the front
 */
record Screen(String name, Node node, Runnable shown) {}
