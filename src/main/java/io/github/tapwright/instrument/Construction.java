package io.github.tapwright.instrument;

import java.util.Optional;

/**
 * How the top is made; the layers are counted from outside to inside.
 *
 * @param kind solid or which sandwich; empty if unknown
 * @param outerSkin the layer one sees, or the whole of a solid top
 * @param core what lies between the skins of a sandwich
 * @param innerSkin the layer the braces are glued to in a sandwich
 * @param bracing the pattern of braces in the maker's words; empty if unknown
 */
public record Construction(
        Optional<ConstructionKind> kind, Layer outerSkin, Layer core, Layer innerSkin, Optional<String> bracing) {

    /** Nobody wrote anything down. */
    public static final Construction UNKNOWN =
            new Construction(Optional.empty(), Layer.UNKNOWN, Layer.UNKNOWN, Layer.UNKNOWN, Optional.empty());

    /** Refuses a solid top with a core or a second skin. */
    public Construction {
        bracing = Entry.line("the bracing", bracing);
        if (kind.equals(Optional.of(ConstructionKind.SOLID)) && (core.known() || innerSkin.known())) {
            throw new RefusedEntryException(
                    "a solid top has one layer only; give it as the outer skin and leave core and inner skin unknown, or"
                            + " choose a sandwich construction");
        }
    }
}
