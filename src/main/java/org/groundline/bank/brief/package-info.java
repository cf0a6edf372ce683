/// The Markdown of a topic's brief: read once into a tree of nodes in which a picture stands by
/// itself and marks of objectives are taken out of the text, and held against what a brief may
/// have. Start reading at [BriefMarkdown][org.groundline.bank.brief.BriefMarkdown].
@NullMarked
package org.groundline.bank.brief;

import org.jspecify.annotations.NullMarked;
