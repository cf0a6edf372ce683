package org.groundline.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.groundline.diagram.Samples.drawings;

import org.groundline.diagram.Samples.Drawn;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;

/// What holds for each kind of drawing, over the whole range of its inputs.
class EveryDrawingTest {
    /// The width that the page leaves for a drawing on a narrow phone (360 px with its margins).
    private static final double PHONE = 322;

    private static final Set<String> ELEMENTS =
            Set.of("svg", "title", "desc", "path", "circle", "text");
    private static final Set<String> ATTRIBUTES =
            Set.of(
                    "xmlns",
                    "viewBox",
                    "role",
                    "aria-labelledby",
                    "id",
                    "class",
                    "data-part",
                    "d",
                    "cx",
                    "cy",
                    "r",
                    "x",
                    "y");

    static Stream<String> kinds() {
        return Diagrams.list().stream().map(Diagram::name);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void itsTextsStandApartAndInsideThePicture(String kind) {
        for (Drawn drawn : drawings(kind)) {
            var svg = drawn.svg();
            var texts = svg.elements("text");
            var boxes = texts.stream().map(WideFont::box).toList();
            for (int i = 0; i < boxes.size(); i++) {
                var box = boxes.get(i);
                String text = texts.get(i).getTextContent();
                assertThat(box.isInside(svg.frame())).as("%s in %s", text, drawn).isTrue();
                assertThat(boxes.subList(0, i))
                        .as("%s in %s", text, drawn)
                        .noneMatch(box::overlaps);
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void itsLinesStayInsideThePicture(String kind) {
        for (Drawn drawn : drawings(kind)) {
            var svg = drawn.svg();
            for (Element path : svg.elements("path")) {
                assertThat(DrawnSvg.points(path))
                        .as("%s", drawn)
                        .isNotEmpty()
                        .allMatch(p -> Box.around(p, 0, 0).isInside(svg.frame()));
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void itsTextIsReadableOnANarrowPhone(String kind) {
        double pixelsPerUnit = PHONE / drawings(kind).getFirst().svg().frame().right();

        assertThat(Lettering.SIZE * pixelsPerUnit).isGreaterThan(13);
    }

    /// Numbers at an axis stand for no value of their own.
    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void itsDescriptionHoldsEachNumberThatStandsInThePicture(String kind) {
        for (Drawn drawn : drawings(kind)) {
            assertThat(drawn.svg().texts())
                    .filteredOn(text -> text.matches(".*\\d.*") && !text.matches("−?[\\d.]+"))
                    .allSatisfy(text -> assertThat(drawn.drawing().description()).contains(text));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void itIsNamedByItsTitleAndItsDescription(String kind) {
        for (Drawn drawn : drawings(kind)) {
            var svg = drawn.svg();
            var root = svg.document().getDocumentElement();
            var title = svg.elements("title").getFirst();
            var description = svg.elements("desc").getFirst();
            assertThat(root.getAttribute("role")).isEqualTo("img");
            assertThat(root.getAttribute("aria-labelledby"))
                    .isEqualTo(title.getAttribute("id") + " " + description.getAttribute("id"));
            assertThat(title.getTextContent()).isEqualTo(drawn.drawing().title()).isNotBlank();
            assertThat(description.getTextContent())
                    .isEqualTo(drawn.drawing().description())
                    .isNotBlank();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void itHoldsNoStyleNoColourAndNoScript(String kind) {
        for (Drawn drawn : drawings(kind)) {
            for (Element element : drawn.svg().elements()) {
                assertThat(ELEMENTS).contains(element.getTagName());
                var attributes = element.getAttributes();
                for (int i = 0; i < attributes.getLength(); i++) {
                    assertThat(ATTRIBUTES).contains(attributes.item(i).getNodeName());
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void theStyleSheetKnowsEachOfItsClasses(String kind) throws Exception {
        String css = Files.readString(Path.of("src/main/resources/static/style.css"));
        for (Drawn drawn : drawings(kind)) {
            assertThat(drawn.svg().elements())
                    .flatExtracting(e -> Set.of(e.getAttribute("class").split(" ")))
                    .filteredOn(name -> !name.isEmpty())
                    .allSatisfy(name -> assertThat(css).contains(".diagram ." + name + " {"));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void itIsDrawnTheSameWayEachTime(String kind) {
        var diagram = Diagrams.find(kind).orElseThrow();
        for (Drawn drawn : drawings(kind)) {
            assertThat(Samples.draw(diagram, drawn.situation(), drawn.purpose()))
                    .contains(drawn.drawing());
        }
    }
}
