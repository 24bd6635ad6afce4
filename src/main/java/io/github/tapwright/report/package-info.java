/**
 * Reports of one sitting, of two, of an instrument's history and of groups: in plain words for a client, or with every number for the
 * workshop.
 *
 * <p>{@link io.github.tapwright.report.MakeReport} gathers what a report needs and writes it. Every report becomes one tree of
 * {@link io.github.tapwright.report.xhtml}, in which no text can be anything but text; the same tree is the HTML file and the source of
 * the PDF. Decision 7 says why.
 */
@NullMarked
package io.github.tapwright.report;

import org.jspecify.annotations.NullMarked;
