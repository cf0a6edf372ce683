package org.groundline.diagram;

import org.jspecify.annotations.Nullable;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/// Reads an illustration out of an SVG text, and lets nothing through but plain shapes, texts and
/// the classes that the pages know: no styles, colours, links, ids, scripts or foreign content.
/// What comes out is written anew, never copied.
public final class IllustrationReader {
    private static final int LONGEST = 30_000;
    private static final Pattern VIEW_BOX = Pattern.compile("0 0 (\\d{2,4}) (\\d{2,4})");
    private static final int NARROWEST = 200;
    private static final int WIDEST = 680;
    private static final XMLInputFactory XML = plainFactory();

    private final XMLStreamReader in;
    private final StringBuilder content = new StringBuilder();
    private final Deque<Shape> open = new ArrayDeque<>();
    private String title = "";
    private String description = "";
    private int width;
    private int height;

    private IllustrationReader(XMLStreamReader in) {
        this.in = in;
    }

    private static XMLInputFactory plainFactory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        return factory;
    }

    /// @throws IllustrationFault if it is no SVG, or holds what no illustration may
    public static Illustration read(String svg) throws IllustrationFault {
        if (svg.length() > LONGEST) {
            throw new IllustrationFault(
                    1, "it has more than 30 kB", "draw it with fewer points and decimals");
        }
        try {
            return new IllustrationReader(XML.createXMLStreamReader(new StringReader(svg))).read();
        } catch (XMLStreamException e) {
            throw new IllustrationFault(
                    Math.max(1, e.getLocation() == null ? 1 : e.getLocation().getLineNumber()),
                    "it is no well-formed XML",
                    "open it in a browser, which shows where it breaks");
        }
    }

    private Illustration read() throws XMLStreamException, IllustrationFault {
        while (in.hasNext()) {
            switch (in.next()) {
                case XMLStreamConstants.START_ELEMENT -> start();
                case XMLStreamConstants.END_ELEMENT -> end();
                case XMLStreamConstants.CHARACTERS -> text();
                case XMLStreamConstants.DTD,
                        XMLStreamConstants.ENTITY_REFERENCE,
                        XMLStreamConstants.PROCESSING_INSTRUCTION ->
                        throw fault("it has a declaration or an entity", "write plain elements");
                default -> {} // comments and white space between elements
            }
        }
        requireWords();
        return new Illustration(width, height, content.toString(), title, description);
    }

    private void requireWords() throws IllustrationFault {
        if (title.isEmpty() || description.isEmpty()) {
            throw new IllustrationFault(
                    1,
                    "it has no title or no desc",
                    "begin with <title>what it shows</title> and <desc>the same in words</desc>");
        }
    }

    private void start() throws XMLStreamException, IllustrationFault {
        String name = qualified(in.getPrefix(), in.getLocalName());
        if (open.isEmpty()) {
            root(name);
        } else if (name.equals("title") || name.equals("desc")) {
            words(name);
        } else {
            Shape shape = shape(name);
            open.push(shape);
            content.append('<').append(name);
            attributes(shape);
            content.append('>');
        }
    }

    private void root(String name) throws IllustrationFault {
        if (!name.equals("svg")) {
            throw fault("it begins with <%s>".formatted(name), "begin with <svg viewBox=…>");
        }
        Matcher box = VIEW_BOX.matcher(String.valueOf(in.getAttributeValue(null, "viewBox")));
        if (in.getAttributeCount() != 1 || !box.matches()) {
            throw fault(
                    "its svg element has not just a viewBox from 0 0 in whole numbers",
                    "write <svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 340 220\">");
        }
        width = Integer.parseInt(box.group(1));
        height = Integer.parseInt(box.group(2));
        if (width < NARROWEST || width > WIDEST || height > WIDEST) {
            throw fault(
                    "it is %d wide and %d high".formatted(width, height),
                    "draw it %d to %d wide and at most %d high"
                            .formatted(NARROWEST, WIDEST, WIDEST));
        }
        open.push(Shape.SVG);
    }

    private void words(String name) throws XMLStreamException, IllustrationFault {
        if (open.size() != 1) {
            throw fault("a <%s> stands inside the drawing".formatted(name), "put it at the top");
        }
        String text = in.getElementText().strip().replaceAll("\\s+", " ");
        if (name.equals("title")) {
            title = text;
        } else {
            description = text;
        }
    }

    private Shape shape(String name) throws IllustrationFault {
        return Shape.find(name)
                .orElseThrow(
                        () ->
                                fault(
                                        "it has the element <%s>".formatted(name),
                                        "use only " + Shape.names()));
    }

    private void attributes(Shape shape) throws IllustrationFault {
        for (int i = 0; i < in.getAttributeCount(); i++) {
            String name = qualified(in.getAttributePrefix(i), in.getAttributeLocalName(i));
            String value = in.getAttributeValue(i).strip();
            if (!shape.allows(name, value)) {
                throw fault(
                        "<%s> has %s=\"%s\"".formatted(in.getLocalName(), name, value),
                        shape.remedy(name));
            }
            content.append(' ').append(name).append("=\"").append(value).append('"');
        }
    }

    /// A name as written, so that one of another vocabulary is none that is known.
    private static String qualified(@Nullable String prefix, String name) {
        return prefix == null || prefix.isEmpty() ? name : prefix + ":" + name;
    }

    private void text() throws IllustrationFault {
        String text = in.getText();
        if (text.isBlank()) {
            return;
        }
        if (open.isEmpty() || !open.peek().holdsText()) {
            throw fault("a text stands outside <text>", "put it into a <text>");
        }
        content.append(Svg.escaped(text.replaceAll("\\s+", " ")));
    }

    private void end() {
        Shape closed = open.pop();
        if (closed != Shape.SVG) {
            content.append("</").append(closed.element()).append('>');
        }
    }

    private IllustrationFault fault(String problem, String remedy) {
        return new IllustrationFault(
                Math.max(1, in.getLocation().getLineNumber()), problem, remedy);
    }
}
