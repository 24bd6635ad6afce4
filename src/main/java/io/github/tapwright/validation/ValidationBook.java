package io.github.tapwright.validation;

import java.util.List;
import java.util.function.Consumer;

/**
 * All sections together.
 *
 * @param sections in the order of the page
 */
public record ValidationBook(List<Section> sections) {

    /** Keeps a copy of the list. */
    public ValidationBook {
        sections = List.copyOf(sections);
    }

    /**
     * The book of this program.
     *
     * @return every section there is
     */
    public static ValidationBook shipped() {
        return new ValidationBook(List.of(
                new WindowSection(),
                new KnownTapsSection(),
                new PoleErrorsSection(),
                new BodyModelSection(),
                new NoteSection(),
                new WeightingSection(),
                new BandSection(),
                new ProgrammeSection(),
                new LoudnessSection(),
                new EqualLoudnessSection(),
                new WoodMoistureSection(),
                new AirSection(),
                new ReferenceDataSection(),
                new WorkedExampleSection()));
    }

    /**
     * Runs every check.
     *
     * @param begun told the heading of each section as it begins
     * @return what came of them
     */
    public BookResult run(Consumer<String> begun) {
        return new BookResult(sections.stream()
                .map(section -> {
                    begun.accept(section.title());
                    return Chapter.run(section);
                })
                .toList());
    }
}
