/**
 * Reports: of a sitting, of one set against another, of an instrument over time, or of groups; for a client or for the
 * workshop; PDF or HTML. And what the workshop says of itself on them.
 */
@NullMarked
package io.github.tapwright.desktop.reports;

import org.jspecify.annotations.NullMarked;
