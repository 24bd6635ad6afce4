package io.github.tapwright.report.xhtml;

import java.util.Locale;

/** The elements a report is made of. */
@SuppressWarnings("MissingJavadoc")
public enum Tag {
    HTML,
    HEAD,
    META,
    TITLE,
    STYLE,
    BOOKMARKS,
    BOOKMARK,
    BODY,
    HEADER,
    FOOTER,
    MAIN,
    SECTION,
    DIV,
    H1,
    H2,
    H3,
    P,
    UL,
    LI,
    TABLE,
    THEAD,
    TBODY,
    TR,
    TH,
    TD,
    FIGURE,
    FIGCAPTION,
    IMG,
    STRONG,
    SPAN;

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
