package org.groundline.diagram;

/// A finished drawing.
///
/// @param svg the `svg` element, to be put inside `<figure class="diagram">`; it carries title and
///   description, too
/// @param title what it shows, without a full stop
/// @param description the same facts in words
public record Drawing(String svg, String title, String description) {}
