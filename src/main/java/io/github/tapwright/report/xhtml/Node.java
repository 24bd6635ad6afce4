package io.github.tapwright.report.xhtml;

/** A part of a document: text, or an element with parts of its own. */
public sealed interface Node permits Element, Text {}
