package org.groundline.bank.brief;

import org.commonmark.node.Node;

import java.util.Objects;
import java.util.stream.Stream;

/// Walks nodes.
final class Nodes {
    private Nodes() {}

    static Stream<Node> children(Node node) {
        return Stream.iterate(node.getFirstChild(), Objects::nonNull, Node::getNext);
    }

    /// All nodes below one, each before its children.
    static Stream<Node> below(Node node) {
        return children(node).flatMap(child -> Stream.concat(Stream.of(child), below(child)));
    }
}
