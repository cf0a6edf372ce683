package org.groundline.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// A drawing made by hand: what comes through, and what does not.
class IllustrationTest {
    private static final String HEAD =
            """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 340 200">
              <title>Wind over a ridge</title>
              <desc>A ridge
                from the side.</desc>
            """;

    @Test
    void shapesTextsAndClassesComeThroughAndNothingElse() throws IllustrationFault {
        var read =
                IllustrationReader.read(
                        HEAD
                                + """
                                  <!-- the ridge -->
                                  <g class="thick" transform="translate(2 3)"><path d="M10 180L170 60.5Z"/></g>
                                  <text class="end" x="240" y="90">A &lt; B</text>
                                </svg>
                                """);

        assertThat(read)
                .isEqualTo(
                        new Illustration(
                                340,
                                200,
                                "<g class=\"thick\" transform=\"translate(2 3)\"><path d=\"M10 180L170 60.5Z\"></path></g>"
                                        + "<text class=\"end\" x=\"240\" y=\"90\">A &lt; B</text>",
                                "Wind over a ridge",
                                "A ridge from the side."));
    }

    @Test
    void itIsDrawnWithItsWordsForWhoCannotSeeIt() throws IllustrationFault {
        var drawing = IllustrationReader.read(HEAD + "<line x1=\"1\" y1=\"2\"/></svg>").draw("f");

        assertThat(DrawnSvg.of(drawing).elements("desc"))
                .singleElement()
                .satisfies(desc -> assertThat(desc.getTextContent()).contains("from the side"));
        assertThat(drawing.svg()).contains("aria-labelledby=\"f-title f-desc\"");
        assertThat(drawing.title()).isEqualTo("Wind over a ridge");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<script>alert(1)</script>|the element <script>",
                "<a href=\"x\"><text>A</text></a>|the element <a>",
                "<image href=\"x.png\"/>|the element <image>",
                "<use href=\"#a\"/>|the element <use>",
                "<style>*{}</style>|the element <style>",
                "<foreignObject/>|the element <foreignObject>",
                "<svg viewBox=\"0 0 1 1\"/>|the element <svg>",
                "<path onclick=\"x()\" d=\"M0 0\"/>|onclick",
                "<path style=\"fill:red\" d=\"M0 0\"/>|style",
                "<path fill=\"red\" d=\"M0 0\"/>|fill",
                "<path id=\"a\" d=\"M0 0\"/>|id=",
                "<path class=\"wide\" d=\"M0 0\"/>|class=\"wide\"",
                "<path d=\"M0 0 url(x)\"/>|d=",
                "<path d=\"M0 0\" transform=\"matrix(1 0 0 1 0 0)\"/>|transform",
                "<line x1=\"1e9\"/>|x1=",
                "<rect x=\"1\" width=\"100%\"/>|width=",
                "<text x=\"1\" y=\"1\" xmlns:q=\"urn:q\" q:x=\"1\">A</text>|q:x=\"1\"",
                "<q:g xmlns:q=\"urn:q\"/>|the element <q:g>",
                "<g><title>t</title></g>|a <title> stands inside",
                "<g>words</g>|a text stands outside <text>",
                "words|a text stands outside <text>",
                "<path d=\"M0 0\">|no well-formed XML",
            })
    void whatNoIllustrationMayHoldIsRefusedWithItsLine(String element, String problem) {
        assertThatThrownBy(() -> IllustrationReader.read(HEAD + element + "</svg>"))
                .isInstanceOfSatisfying(
                        IllustrationFault.class,
                        fault -> {
                            assertThat(fault.line()).isEqualTo(5);
                            assertThat(fault.problem()).contains(problem);
                            assertThat(fault.remedy()).isNotBlank();
                        });
    }

    @Test
    void aDeclarationIsRefusedBeforeItsEntitiesAreRead() {
        String bomb =
                "<!DOCTYPE svg [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;\">]>"
                        + HEAD
                        + "<text>&b;</text></svg>";

        assertThatThrownBy(() -> IllustrationReader.read(bomb))
                .isInstanceOf(IllustrationFault.class)
                .hasMessageContaining("it has a declaration or an entity");
    }

    @Test
    void aFileWithoutWordsForWhoCannotSeeItIsRefused() {
        assertRefused(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 340 200\"/>",
                "no title or no desc");
    }

    @Test
    void anotherSizeIsRefused() {
        assertRefused(HEAD.replace("340", "900") + "</svg>", "900 wide and 200 high");
        assertRefused(HEAD.replace("0 0 340", "1 0 340") + "</svg>", "viewBox");
        assertRefused(HEAD.replace("viewBox", "width=\"9\" viewBox") + "</svg>", "viewBox");
    }

    @Test
    void whatIsNoSvgIsRefused() {
        assertRefused("<html/>", "begins with <html>");
        assertRefused("", "no well-formed XML");
        assertRefused("x".repeat(30_001), "more than 30 kB");
    }

    private static void assertRefused(String svg, String problem) {
        assertThatThrownBy(() -> IllustrationReader.read(svg))
                .isInstanceOf(IllustrationFault.class)
                .hasMessageContaining(problem);
    }
}
