package org.groundline;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

import org.junit.jupiter.api.Test;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

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
                    List.of("sitting"),
                    List.of("record"),
                    List.of("insight"),
                    List.of("demo"),
                    List.of("web"),
                    List.of("bench"),
                    List.of("command"));

    @ArchTest
    static void noFloorLooksUp(com.tngtech.archunit.core.domain.JavaClasses program) {
        for (int i = 0; i < FLOORS.size(); i++) {
            for (String name : FLOORS.get(i)) {
                noClasses()
                        .that(resideInAPackage(packageOf(name)))
                        .should()
                        .dependOnClassesThat(resideInAnyPackage(above(i, name)))
                        .allowEmptyShould(true)
                        .check(program);
            }
        }
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

    private static String[] above(int floor, String self) {
        return FLOORS.subList(floor, FLOORS.size()).stream()
                .flatMap(List::stream)
                .filter(name -> !name.equals(self))
                .map(ArchitectureTest::packageOf)
                .toArray(String[]::new);
    }
}
