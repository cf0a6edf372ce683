package org.groundline.diagram;

/// A line drawing made by hand, in the same few elements and classes as a computed one, so that it
/// takes its look from the page and does nothing else.
///
/// @param width of the picture, in its own units
/// @param content its elements, as [IllustrationReader] writes them
/// @param title what it shows, without a full stop
/// @param description the same for who cannot see it
public record Illustration(
        int width, int height, String content, String title, String description) {
    /// @param idPrefix begins the ids in the file; no two drawings on a page may share it
    public Drawing draw(String idPrefix) {
        return new Drawing(
                Svg.root(width, height, idPrefix, title, description, content), title, description);
    }
}
