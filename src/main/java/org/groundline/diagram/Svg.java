package org.groundline.diagram;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// Writes elements: geometry, classes and the name of the part, nothing else.
final class Svg {
    private Svg() {}

    static String root(
            double width, double height, String ids, String title, String about, String inside) {
        return """
               <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %s %s" role="img" \
               aria-labelledby="%s-title %s-desc"><title id="%s-title">%s</title>\
               <desc id="%s-desc">%s</desc>%s</svg>"""
                .formatted(
                        number(width),
                        number(height),
                        ids,
                        ids,
                        ids,
                        escaped(title),
                        ids,
                        escaped(about),
                        inside);
    }

    static String path(List<Point> points, boolean closed, String classes, String part) {
        String way = points.stream().map(Svg::pair).collect(Collectors.joining("L"));
        return "<path%s%s d=\"M%s%s\"/>"
                .formatted(
                        attribute("class", classes),
                        attribute("data-part", part),
                        way,
                        closed ? "Z" : "");
    }

    /// Several separate strokes as one element.
    static String strokes(List<Segment> strokes, String classes, String part) {
        String way =
                strokes.stream()
                        .map(s -> "M" + pair(s.from()) + "L" + pair(s.to()))
                        .collect(Collectors.joining());
        return "<path%s%s d=\"%s\"/>"
                .formatted(attribute("class", classes), attribute("data-part", part), way);
    }

    static String circle(Point middle, double radius, String classes, String part) {
        return "<circle%s%s cx=\"%s\" cy=\"%s\" r=\"%s\"/>"
                .formatted(
                        attribute("class", classes),
                        attribute("data-part", part),
                        number(middle.x()),
                        number(middle.y()),
                        number(radius));
    }

    static String text(Point foot, TextEnd end, boolean asked, String text) {
        String classes =
                Stream.of(end.cssClass(), asked ? "asked" : "")
                        .filter(c -> !c.isEmpty())
                        .collect(Collectors.joining(" "));
        return "<text%s x=\"%s\" y=\"%s\">%s</text>"
                .formatted(
                        attribute("class", classes),
                        number(foot.x()),
                        number(foot.y()),
                        escaped(text));
    }

    private static String attribute(String name, String value) {
        return value.isEmpty() ? "" : " %s=\"%s\"".formatted(name, value);
    }

    private static String pair(Point point) {
        return number(point.x()) + " " + number(point.y());
    }

    /// Two decimals: a hundredth of a unit is no longer seen.
    private static String number(double value) {
        double rounded = Math.round(value * 100) / 100.0;
        return rounded == Math.rint(rounded)
                ? Long.toString((long) rounded)
                : Double.toString(rounded);
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
