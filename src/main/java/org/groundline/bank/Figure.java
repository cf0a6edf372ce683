package org.groundline.bank;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;

import org.groundline.diagram.Drawing;
import org.groundline.diagram.Purpose;

/// A drawing of an item. It is kept as written by [Frozen] for ever.
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "form")
@JsonSubTypes({
    @JsonSubTypes.Type(value = ComputedFigure.class, name = "computed"),
    @JsonSubTypes.Type(value = IllustratedFigure.class, name = "illustrated")
})
public sealed interface Figure permits ComputedFigure, IllustratedFigure {
    /// Draws it for a page.
    ///
    /// @param idPrefix begins the ids in it; no two drawings on a page may share it
    Drawing draw(Purpose purpose, String idPrefix);
}
