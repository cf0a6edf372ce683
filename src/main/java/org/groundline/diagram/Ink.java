package org.groundline.diagram;

import java.util.ArrayList;

/// How a line is drawn; the style sheet knows the widths and colours of these classes.
record Ink(boolean thick, boolean dashed, boolean faint, boolean asked) {
    static final Ink THIN = new Ink(false, false, false, false);
    static final Ink THICK = new Ink(true, false, false, false);
    static final Ink DASHED = new Ink(false, true, false, false);
    static final Ink FAINT = new Ink(false, false, true, false);

    Ink asked(boolean isAsked) {
        return new Ink(thick, dashed, faint, isAsked);
    }

    String classes() {
        var classes = new ArrayList<String>();
        if (thick) {
            classes.add("thick");
        }
        if (dashed) {
            classes.add("dashed");
        }
        if (faint) {
            classes.add("faint");
        }
        if (asked) {
            classes.add("asked");
        }
        return String.join(" ", classes);
    }
}
