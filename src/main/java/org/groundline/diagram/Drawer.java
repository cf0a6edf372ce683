package org.groundline.diagram;

/// Draws one motif.
@FunctionalInterface
interface Drawer {
    void draw(Plate plate);
}
