package org.groundline.bank.brief;

import org.commonmark.node.CustomNode;

import java.util.List;

/// The ids of objectives that stood in braces at the end of a heading or paragraph, in their order;
/// whether there are such objectives is not known here.
public final class ObjectiveMarks extends CustomNode {
    private final List<String> objectives;

    ObjectiveMarks(List<String> objectives) {
        this.objectives = List.copyOf(objectives);
    }

    public List<String> objectives() {
        return objectives;
    }
}
