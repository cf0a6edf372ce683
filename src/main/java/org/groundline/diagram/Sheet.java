package org.groundline.diagram;

import java.util.ArrayList;
import java.util.List;

/// The paper of one drawing, 340 units wide: on a phone about one unit is a pixel, so that its text
/// of 14 units is read there, and it is enlarged on a wider page.
///
/// Lines are drawn at once. Labels are placed last, when all lines are known.
final class Sheet {
    static final double WIDTH = 340;
    private static final double MARGIN = 2;

    private final double height;
    private final StringBuilder elements = new StringBuilder();
    private final List<Segment> lines = new ArrayList<>();
    private final List<Box> texts = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();

    Sheet(double height) {
        this.height = height;
    }

    double height() {
        return height;
    }

    /// Something made of lines, which labels keep off.
    void draw(String element, List<Segment> occupied) {
        elements.append(element);
        lines.addAll(occupied);
    }

    /// A text that stands nowhere else, such as a number at an axis.
    void text(String text, Spot spot) {
        var label = new Label(List.of(new TextLine(text, false)), List.of(spot));
        texts.add(label.boxAt(spot));
        write(label, spot);
    }

    void label(Label label) {
        labels.add(label);
    }

    /// The `svg` element. The labels are placed now, so a sheet is finished once.
    String finish(String idPrefix, String title, String description) {
        var frame = new Box(MARGIN, MARGIN, WIDTH - MARGIN, height - MARGIN);
        var spots = new Placing(frame, lines, texts).place(labels);
        for (int i = 0; i < spots.size(); i++) {
            write(labels.get(i), spots.get(i));
        }
        return Svg.root(WIDTH, height, idPrefix, title, description, elements.toString());
    }

    private void write(Label label, Spot spot) {
        var box = label.boxAt(spot);
        var end = spot.fixedEnd();
        var foot = new Point(end.of(box), box.top() + Lettering.ASCENT);
        for (TextLine line : label.lines()) {
            elements.append(Svg.text(foot, end, line.asked(), line.text()));
            foot = foot.plus(0, Lettering.HEIGHT);
        }
    }
}
