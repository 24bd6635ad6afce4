/**
 * Documents as a tree that cannot be malformed: every text and attribute is escaped when the tree is written, and
 * nothing else can be put into it.
 */
@NullMarked
package io.github.tapwright.report.xhtml;

import org.jspecify.annotations.NullMarked;
