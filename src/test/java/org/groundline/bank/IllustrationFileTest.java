package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.file.Finding;
import org.groundline.diagram.Purpose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.nio.file.Path;
import java.util.List;

/// Drawings made by hand in the small bank.
class IllustrationFileTest {
    private static final String FILE = "illustrations/ridge.svg";
    private static final String RIDGE =
            """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 340 200">
              <title>A ridge</title>
              <desc>A ridge from the side, wind from the left.</desc>
              <path class="thick" d="M10 180L170 60L330 180"/>
            </svg>
            """;

    @TempDir private Path folder;
    private SmallBank bank = new SmallBank(Path.of(""));

    @BeforeEach
    void illustrate() {
        bank =
                SmallBank.copiedTo(folder)
                        .write(FILE, RIDGE)
                        .replace(
                                SmallBank.FIXED,
                                "source: common practice",
                                "source: common practice\n    illustration: ridge");
    }

    private List<String> findings() {
        return Questions.check(bank.folder()).findings().stream().map(Finding::text).toList();
    }

    @Test
    void aQuestionShowsItsIllustration() {
        Questions questions = Questions.load(bank.folder());
        Question question = illustrated(questions);

        Figure figure = questions.pose(question, 1).shown().figures().getFirst();

        assertThat(figure.draw(Purpose.STEM, "f").svg())
                .contains("<title id=\"f-title\">A ridge</title>")
                .contains("<path class=\"thick\" d=\"M10 180L170 60L330 180\">");
        assertThat(questions.pose(question, 1).key().figures()).isEmpty();
    }

    @Test
    void anotherDrawingMakesAnotherVersion() {
        String before = illustrated(Questions.load(bank.folder())).version();

        bank.replace(FILE, "60L330", "70L330");

        assertThat(illustrated(Questions.load(bank.folder())).version()).isNotEqualTo(before);
    }

    @Test
    void anUnknownIllustrationIsFoundOut() {
        bank.replace(SmallBank.FIXED, "illustration: ridge", "illustration: ridges");

        assertThat(findings())
                .anyMatch(f -> f.contains("names the unknown illustration 'ridges'; did you mean"))
                .anyMatch(
                        f ->
                                f.startsWith(
                                                FILE
                                                        + ":1: warning: the illustration stands beside no")
                                        && f.endsWith("(illustration-unused)"));
    }

    @Test
    void whatNoIllustrationMayHoldIsFoundOutWithItsLine() {
        bank.replace(FILE, "class=\"thick\"", "fill=\"red\"");

        assertThat(findings())
                .containsExactly(
                        FILE
                                + ":4: error: <path> has fill=\"red\"; leave it out: the page gives"
                                + " colours and widths (illustration)");
    }

    @Test
    void aFileThatIsNoDrawingIsToldOf() {
        bank.write("illustrations/ridge.png", "no drawing");

        assertThat(findings())
                .singleElement()
                .satisfies(f -> assertThat(f).startsWith("illustrations/ridge.png:1: warning"));
    }

    private static Question illustrated(Questions questions) {
        return questions.all().stream()
                .filter(q -> q instanceof FixedQuestion fixed && !fixed.figures().isEmpty())
                .findFirst()
                .orElseThrow();
    }
}
