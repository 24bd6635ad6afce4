package io.github.tapwright;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.ITypeConverter;

/** The arrows between packages, as docs/architecture.md draws them; whatever is not drawn is forbidden. */
class ArchitectureTest {

    private static final String ROOT = "io.github.tapwright";

    private static final Set<String> MATHEMATICS =
            Set.of("recording", "signal", "tap", "mode", "note", "level", "climate", "statistics");
    private static final Set<String> WORKSHOP = union(MATHEMATICS, Set.of("instrument", "sitting"));
    private static final Set<String> SERVICES =
            Set.of("archive", "audio", "exchange", "chart", "report", "comparison", "validation");

    /** Which of our packages each of our packages may know. */
    private static final Map<String, Set<String>> ARROWS = Map.ofEntries(
            Map.entry("recording", Set.of()),
            Map.entry("climate", Set.of()),
            Map.entry("statistics", Set.of()),
            Map.entry("signal", Set.of("recording", "statistics")),
            Map.entry("tap", Set.of("signal", "recording", "statistics")),
            Map.entry("mode", Set.of("tap", "signal", "recording", "statistics")),
            Map.entry("note", Set.of("signal", "recording", "statistics")),
            Map.entry("level", Set.of("signal", "recording", "statistics")),
            Map.entry("instrument", MATHEMATICS),
            Map.entry("sitting", union(MATHEMATICS, Set.of("instrument"))),
            Map.entry("comparison", WORKSHOP),
            Map.entry("validation", MATHEMATICS),
            Map.entry("archive", WORKSHOP),
            Map.entry("audio", WORKSHOP),
            Map.entry("exchange", union(WORKSHOP, Set.of("comparison", "validation"))),
            Map.entry("chart", WORKSHOP),
            Map.entry("report", union(WORKSHOP, Set.of("chart", "comparison"))),
            Map.entry("cli", union(WORKSHOP, SERVICES)),
            Map.entry("desktop", union(WORKSHOP, SERVICES)));

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(ROOT);

    @Test
    void theseRulesHaveSeenTheProgram() {
        assertThat(CLASSES.size()).isGreaterThan(30);
    }

    @Test
    void everyPackageHasItsArrows() {
        assertThat(ARROWS.keySet()).containsAll(ourPackages());
    }

    @ParameterizedTest
    @MethodSource("arrows")
    void aPackageKnowsOnlyWhatItsArrowsPointTo(String from, Set<String> allowed) {
        Set<String> known = union(allowed, Set.of(from));
        String[] patterns = known.stream().map(ArchitectureTest::pattern).toArray(String[]::new);
        holds(noClasses()
                .that()
                .resideInAPackage(pattern(from))
                .should()
                .dependOnClassesThat(resideInAPackage(ROOT + "..").and(not(resideInAnyPackage(patterns)))));
    }

    @Test
    void noPackagesKnowEachOtherInACircle() {
        slices().matching(ROOT + ".(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void theMathematicsTouchesNoFilesThreadsDatabasesSoundCardsOrScreens() {
        holds(noClasses()
                .that(resideInAnyPackage(mathematicsPatterns()))
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                                "java.io..",
                                "java.nio.file..",
                                "java.net..",
                                "java.sql..",
                                "java.util.concurrent..",
                                "javax.sound..",
                                "javax.swing..",
                                "java.awt..",
                                "javafx..")
                        .and(not(JavaClass.Predicates.type(UncheckedIOException.class))))
                .orShould()
                .dependOnClassesThat()
                .belongToAnyOf(Thread.class, Clock.class, ProcessHandle.class));
    }

    @ParameterizedTest
    @ValueSource(
            classes = {Instant.class, LocalDate.class, LocalDateTime.class, OffsetDateTime.class, ZonedDateTime.class})
    void theMathematicsDoesNotAskWhatTimeItIs(Class<?> time) {
        holds(noClasses()
                .that(resideInAnyPackage(mathematicsPatterns()))
                .should()
                .callMethod(time, "now")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime"));
    }

    @ParameterizedTest
    @MethodSource("owners")
    void aLibraryIsKnownToItsOwnersAlone(String library, Set<String> owners) {
        String[] patterns = owners.stream().map(ArchitectureTest::pattern).toArray(String[]::new);
        holds(noClasses()
                .that(resideInAPackage(ROOT + "..").and(not(resideInAnyPackage(patterns))))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library));
    }

    @Test
    void onlyTheCompositionRootKnowsWhichArchiveAndWhichSoundTheCommandsUse() {
        holds(noClasses()
                .that()
                .resideInAPackage(pattern("cli"))
                .and()
                .haveNameNotMatching(".*\\.Bench(\\$.*)?")
                .should()
                .dependOnClassesThat()
                .resideInAPackage(pattern("audio"))
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching(".*\\.archive\\.(Archive|Restore)"));
    }

    @Test
    void onlyTheCompositionRootKnowsWhichArchiveAndWhichSoundTheScreensUse() {
        holds(noClasses()
                .that()
                .resideInAPackage(pattern("desktop"))
                .and()
                .haveNameNotMatching(".*\\.OpenDesk(\\$.*)?")
                .should()
                .dependOnClassesThat()
                .resideInAPackage(pattern("audio"))
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching(".*\\.archive\\.(Archive|Restore)"));
    }

    @Test
    void screensDoNotKnowEachOther() {
        for (String screen : List.of(
                "compare", "listening", "notes", "reports", "response", "shelf", "sitting", "sound", "timeline")) {
            holds(noClasses()
                    .that()
                    .resideInAPackage(ROOT + ".desktop." + screen + "..")
                    .should()
                    .dependOnClassesThat(resideInAPackage(ROOT + ".desktop..")
                            .and(not(resideInAnyPackage(
                                    ROOT + ".desktop." + screen + "..",
                                    ROOT + ".desktop.conditions..",
                                    ROOT + ".desktop.part..",
                                    ROOT + ".desktop.plot..",
                                    ROOT + ".desktop.settings..",
                                    ROOT + ".desktop.sound..",
                                    ROOT + ".desktop.work..")))));
        }
    }

    @Test
    void modelsOfScreensNeedNeitherAScreenNorADatabase() {
        holds(noClasses()
                .that()
                .resideInAPackage(pattern("desktop"))
                .and()
                .haveSimpleNameEndingWith("Model")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javafx.scene..", "java.sql.."));
    }

    @Test
    void noClassHasANameThatHidesWhatItDoes() {
        holds(noClasses().should().haveNameMatching(".*(Util|Utils|Helper|Manager|Impl)(\\$.*)?"));
        assertThat(ourPackages()).doesNotContain("util", "common", "manager", "helper", "impl");
    }

    /** The launcher leaves them out of the shared classes by that name, so that all of picocli can be shared. */
    @Test
    void whatConvertsWordsOfTheCommandLineIsCalledAConverter() {
        holds(noClasses()
                .that()
                .areAssignableTo(ITypeConverter.class)
                .should()
                .haveNameNotMatching(".*\\.cli\\..*Converter.*"));
    }

    @Test
    void everyPackageSaysWhatMayBeNull() {
        assertThat(CLASSES.stream().map(JavaClass::getPackage).distinct())
                .allMatch(p -> p.isAnnotatedWith(NullMarked.class), "is @NullMarked");
    }

    static Stream<Arguments> arrows() {
        return ARROWS.entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
    }

    static Stream<Arguments> owners() {
        return Stream.of(
                Arguments.of("org.jtransforms..", Set.of("signal")),
                Arguments.of("be.tarsos.dsp..", Set.of("note")),
                Arguments.of("com.fasterxml.jackson..", Set.of("exchange")),
                Arguments.of("org.apache.commons.csv..", Set.of("exchange")),
                Arguments.of("java.sql..", Set.of("archive")),
                Arguments.of("org.sqlite..", Set.of("archive")),
                Arguments.of("javax.sound..", Set.of("audio")),
                Arguments.of("java.awt..", Set.of("chart", "report")),
                Arguments.of("javax.imageio..", Set.of("chart", "report")),
                Arguments.of("org.jfree..", Set.of("chart", "report")),
                Arguments.of("picocli..", Set.of("cli")),
                Arguments.of("javafx..", Set.of("desktop")));
    }

    /** A rule may speak of a package that does not exist yet. */
    private static void holds(ArchRule rule) {
        rule.allowEmptyShould(true).check(CLASSES);
    }

    private static Set<String> ourPackages() {
        return CLASSES.stream()
                .map(JavaClass::getPackage)
                .map(JavaPackage::getName)
                .filter(name -> name.startsWith(ROOT + "."))
                .map(name -> name.substring(ROOT.length() + 1).replaceAll("\\..*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String[] mathematicsPatterns() {
        return MATHEMATICS.stream().map(ArchitectureTest::pattern).toArray(String[]::new);
    }

    private static String pattern(String name) {
        return ROOT + "." + name + "..";
    }

    private static Set<String> union(Set<String> a, Set<String> b) {
        return Stream.concat(a.stream(), b.stream()).collect(Collectors.toUnmodifiableSet());
    }
}
