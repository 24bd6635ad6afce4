package io.github.tapwright.desktop.work;

import io.github.tapwright.desktop.part.LevelBasis;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.SittingId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What came of analysing sittings anew.
 *
 * @param all those that were, in the order they were
 * @param failure why the one after them was not; empty if all were
 */
record Analysed(List<One> all, Optional<RuntimeException> failure) {

    /** Keeps a copy of the list. */
    Analysed {
        all = List.copyOf(all);
    }

    /** One sitting: its latest analysis before and now. */
    record One(SittingId id, Analysis before, Analysis after) {

        boolean changed() {
            return before.number() != after.number();
        }

        /** What its levels were measured by before, if that is another than now and not withdrawn. */
        Optional<LevelBasis.By> wayBack() {
            Optional<LevelBasis.By> now = after.findings().plucks().flatMap(LevelBasis.By::of);
            return before.findings().plucks().flatMap(LevelBasis.By::of).filter(by -> !now.equals(Optional.of(by)));
        }

        private String words() {
            return changed()
                    ? "Analysed sitting " + id + " anew: " + words(after) + "; before, " + words(before)
                            + ". Earlier results stay beside it"
                    : same("Sitting " + id);
        }

        private String words(Analysis of) {
            return of.findings().inShort()
                    + (before.methodVersion().equals(after.methodVersion()) ? "" : " by method " + of.methodVersion());
        }
    }

    private static String same(String names) {
        return names + ": every figure is the same, nothing added";
    }

    static String names(List<SittingId> ids) {
        return (ids.size() == 1 ? "sitting " : "sittings ")
                + ids.stream().map(SittingId::toString).collect(Collectors.joining(", "));
    }

    List<One> changed() {
        return all.stream().filter(One::changed).toList();
    }

    One of(SittingId id) {
        return all.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }

    /** Whether every one that was measured otherwise can be measured as before. */
    boolean canBeTakenBack() {
        return !changed().isEmpty()
                && changed().stream().allMatch(one -> one.wayBack().isPresent());
    }

    String words() {
        if (all.size() == 1) {
            return all.get(0).words();
        }
        return changed().isEmpty()
                ? same(capital(names(all.stream().map(One::id).toList())))
                : "Analysed " + names(changed().stream().map(One::id).toList()) + " anew, now "
                        + changed().stream()
                                .map(one -> one.after().findings().inShort())
                                .distinct()
                                .collect(Collectors.joining("; "))
                        + ". Earlier results stay beside them";
    }

    /** What could not be taken back any more. */
    String stays() {
        List<SittingId> same =
                all.stream().filter(one -> !one.changed()).map(One::id).toList();
        return capital(names(same)) + (same.size() == 1 ? " stays as it is" : " stay as they are")
                + ": analysed again elsewhere since";
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
