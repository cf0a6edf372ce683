/// Line drawings computed from an item's numbers, as SVG text with its facts in words: a glide
/// path, a polar with its tangent, a wind triangle, forces. A drawing for a stem never depends on
/// what the student does not know: its drawer cannot read such a value. A drawing holds classes
/// only, no colours and no styles, and its labels neither touch each other nor leave the picture.
/// Start reading at [Diagrams][org.groundline.diagram.Diagrams], then
/// [GlidePath][org.groundline.diagram.GlidePath].
@NullMarked
package org.groundline.diagram;

import org.jspecify.annotations.NullMarked;
