package org.groundline.diagram;

import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;

/// A drawing read back from its file.
record DrawnSvg(Document document) {
    private static final Pattern PAIR = Pattern.compile("(-?[\\d.]+) (-?[\\d.]+)");

    static DrawnSvg of(Drawing drawing) {
        try {
            var factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            var source = new InputSource(new StringReader(drawing.svg()));
            return new DrawnSvg(factory.newDocumentBuilder().parse(source));
        } catch (Exception e) {
            throw new AssertionError("the drawing is no XML: " + drawing.svg(), e);
        }
    }

    /// An arrow from its foot to its tip, or a measure from one head to the other.
    record Arrow(Point from, Point to) {
        double length() {
            return from.distanceTo(to);
        }

        Point way() {
            return to.minus(from);
        }
    }

    List<Element> elements() {
        return elements("*");
    }

    List<Element> elements(String tag) {
        var found = document.getElementsByTagName(tag);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    List<Element> part(String name) {
        return elements().stream().filter(e -> e.getAttribute("data-part").equals(name)).toList();
    }

    /// The points of the first path of a part.
    List<Point> points(String part) {
        return points(path(part, false));
    }

    Arrow arrow(String part) {
        return new Arrow(points(path(part, false)).getFirst(), points(path(part, true)).getFirst());
    }

    Arrow span(String part) {
        var points = points(part);
        return new Arrow(points.getFirst(), points.getLast());
    }

    Point dot(String part) {
        return part(part).stream()
                .filter(e -> e.getTagName().equals("circle"))
                .map(e -> new Point(number(e, "cx"), number(e, "cy")))
                .findFirst()
                .orElseThrow();
    }

    List<String> texts() {
        return elements("text").stream().map(Element::getTextContent).toList();
    }

    Box frame() {
        var size = document.getDocumentElement().getAttribute("viewBox").split(" ");
        return new Box(0, 0, Double.parseDouble(size[2]), Double.parseDouble(size[3]));
    }

    static List<Point> points(Element path) {
        var points = new ArrayList<Point>();
        PAIR.matcher(path.getAttribute("d"))
                .results()
                .forEach(
                        m ->
                                points.add(
                                        new Point(
                                                Double.parseDouble(m.group(1)),
                                                Double.parseDouble(m.group(2)))));
        return points;
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    private Element path(String part, boolean head) {
        return part(part).stream()
                .filter(e -> e.getTagName().equals("path"))
                .filter(e -> e.getAttribute("class").startsWith("head") == head)
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing is drawn for " + part));
    }
}
