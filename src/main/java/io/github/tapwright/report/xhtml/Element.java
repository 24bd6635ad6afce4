package io.github.tapwright.report.xhtml;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * An element with its attributes and its parts.
 *
 * @param name such as "p"
 * @param attributes in the order they are written
 * @param children in order
 */
public record Element(String name, Map<String, String> attributes, List<Node> children) implements Node {

    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9:-]*");

    /** Refuses names that could end a tag early, and keeps copies. */
    public Element {
        attributes = new LinkedHashMap<>(attributes);
        attributes.replaceAll((key, value) -> Text.cleaned(value));
        children = List.copyOf(children);
        requireName(name);
        attributes.keySet().forEach(Element::requireName);
    }

    private static void requireName(String name) {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("not the name of an element or attribute: " + name);
        }
    }

    /**
     * An element of some parts.
     *
     * @param tag which
     * @param children in order
     * @return the element without attributes
     */
    public static Element of(Tag tag, Node... children) {
        return of(tag, Arrays.asList(children));
    }

    /**
     * An element of some parts.
     *
     * @param tag which
     * @param children in order
     * @return the element without attributes
     */
    public static Element of(Tag tag, List<? extends Node> children) {
        return new Element(tag.word(), Map.of(), List.copyOf(children));
    }

    /**
     * An element of one text.
     *
     * @param tag which
     * @param text its text
     * @return the element without attributes
     */
    public static Element of(Tag tag, String text) {
        return of(tag, List.of(new Text(text)));
    }

    /**
     * The same element with one attribute more.
     *
     * @param attribute its name
     * @param value any text
     * @return the element
     */
    public Element with(String attribute, String value) {
        Map<String, String> more = new LinkedHashMap<>(attributes);
        more.put(attribute, value);
        return new Element(name, more, children);
    }

    /**
     * The same element with one part more.
     *
     * @param child what comes last
     * @return the element
     */
    public Element plus(Node child) {
        List<Node> more = new ArrayList<>(children);
        more.add(child);
        return new Element(name, attributes, more);
    }

    /**
     * The attributes.
     *
     * @return in the order they are written
     */
    @Override
    public Map<String, String> attributes() {
        return Collections.unmodifiableMap(attributes);
    }
}
