package org.groundline;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

import org.junit.jupiter.api.Test;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/// The floors of the house. A floor may use those below it, never those above.
@AnalyzeClasses(packages = "org.groundline", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    /// Bottom to top; the packages of one line are neighbours that do not know each other.
    private static final List<List<String>> FLOORS =
            List.of(
                    List.of("measure", "theory", "chance", "psychometrics"),
                    List.of("error"),
                    List.of("formulary", "daylight"),
                    List.of("database"),
                    List.of("ledger"),
                    List.of("school"),
                    List.of("bank"),
                    List.of("authoring"),
                    List.of("sitting", "reading"),
                    List.of("record"),
                    List.of("insight"),
                    List.of("demo"),
                    List.of("web"),
                    List.of("bench"),
                    List.of("command"));

    /// The rooms of the bank, bottom to top; those of one line do not know each other, and the last
    /// is the bank's own package.
    private static final List<List<String>> ROOMS =
            List.of(
                    List.of("bank.file", "bank.numeric.formula", "bank.numeric.posed"),
                    List.of("bank.numeric.source", "bank.brief", "bank.translation"),
                    List.of("bank.numeric.draw", "bank.numeric.goal", "bank.numeric.picture"),
                    List.of("bank.numeric.working"),
                    List.of("bank.numeric.check"),
                    List.of("bank.numeric"),
                    List.of("bank"));

    @ArchTest
    static void noFloorLooksUp(JavaClasses program) {
        for (int i = 0; i < FLOORS.size(); i++) {
            for (String name : FLOORS.get(i)) {
                String[] above =
                        above(FLOORS, i, name)
                                .map(ArchitectureTest::packageOf)
                                .toArray(String[]::new);
                noClasses()
                        .that(resideInAPackage(packageOf(name)))
                        .should()
                        .dependOnClassesThat(resideInAnyPackage(above))
                        .allowEmptyShould(true)
                        .check(program);
            }
        }
    }

    @ArchTest
    static void noRoomOfTheBankLooksUp(JavaClasses program) {
        for (int i = 0; i < ROOMS.size(); i++) {
            for (String name : ROOMS.get(i)) {
                String[] above =
                        above(ROOMS, i, name)
                                .map(n -> "org.groundline." + n)
                                .toArray(String[]::new);
                noClasses()
                        .that(resideInAPackage("org.groundline." + name))
                        .should()
                        .dependOnClassesThat(resideInAnyPackage(above))
                        .check(program);
            }
        }
    }

    /// A new room has to find its place among the others, or nothing would hold it there.
    @ArchTest
    static void everyPackageOfTheBankIsOneOfItsRooms(JavaClasses program) {
        assertThat(
                        program.stream()
                                .filter(resideInAPackage(packageOf("bank")))
                                .map(JavaClass::getPackageName)
                                .distinct())
                .containsOnlyElementsOf(
                        ROOMS.stream()
                                .flatMap(List::stream)
                                .map(name -> "org.groundline." + name)
                                .toList());
    }

    @ArchTest
    static final ArchRule THEORY_AND_PSYCHOMETRICS_KNOW_ONLY_THE_JDK =
            classes()
                    .that(
                            resideInAnyPackage(
                                    packageOf("theory"),
                                    packageOf("psychometrics"),
                                    packageOf("chance")))
                    .should()
                    .onlyDependOnClassesThat(
                            resideInAnyPackage(
                                    "java..",
                                    "org.jspecify..",
                                    packageOf("theory"),
                                    packageOf("psychometrics"),
                                    packageOf("chance")))
                    .allowEmptyShould(true);

    @ArchTest
    static final ArchRule DRAWINGS_KNOW_ONLY_WHAT_THEY_ARE_COMPUTED_FROM =
            classes()
                    .that(resideInAPackage(packageOf("diagram")))
                    .should()
                    .onlyDependOnClassesThat(
                            resideInAnyPackage(
                                    "java..",
                                    "javax.xml.stream..",
                                    "org.jspecify..",
                                    packageOf("measure"),
                                    packageOf("theory"),
                                    packageOf("formulary"),
                                    packageOf("diagram")));

    @ArchTest
    static final ArchRule ONLY_REPOSITORIES_KNOW_TABLES =
            noClasses()
                    .that(
                            DescribedPredicate.<JavaClass>describe(
                                    "are no repositories and not generated",
                                    c ->
                                            !c.getName().contains("Repository")
                                                    && !c.getPackageName()
                                                            .startsWith(
                                                                    "org.groundline.database.schema")))
                    .should()
                    .dependOnClassesThat(resideInAPackage("org.groundline.database.schema.."));

    @ArchTest
    static final ArchRule ONLY_THE_WEB_KNOWS_HTTP =
            noClasses()
                    .that(resideInAPackage("org.groundline.."))
                    .and(
                            com.tngtech.archunit.base.DescribedPredicate.not(
                                    resideInAPackage(packageOf("web"))))
                    .and()
                    .doNotHaveFullyQualifiedName("org.groundline.Main")
                    .should()
                    .dependOnClassesThat(resideInAnyPackage("io.javalin..", "jakarta.servlet.."));

    @Test
    void theGuideForContributorsSendsNobodyToAClassThatIsNotThere() throws Exception {
        String guide = Files.readString(Path.of("DEVELOPERS.md"));
        var names = Pattern.compile("`([A-Z][A-Za-z]+)\\.java`").matcher(guide);
        try (var files = Files.walk(Path.of("src"))) {
            List<String> present = files.map(f -> f.getFileName().toString()).toList();
            assertThat(names.results().map(m -> m.group(1) + ".java").toList())
                    .hasSizeGreaterThanOrEqualTo(3)
                    .allSatisfy(name -> assertThat(present).contains(name));
        }
    }

    private static String packageOf(String floor) {
        return "org.groundline." + floor + "..";
    }

    /// Those that one of the names may not know: its neighbours and all above.
    private static Stream<String> above(List<List<String>> levels, int level, String self) {
        return levels.subList(level, levels.size()).stream()
                .flatMap(List::stream)
                .filter(name -> !name.equals(self));
    }
}
