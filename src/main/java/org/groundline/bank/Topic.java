package org.groundline.bank;

import java.util.List;

/// What belongs together within a module; practice and pass rates go by topic.
public record Topic(String id, String title, List<Objective> objectives) {
    public Topic {
        objectives = List.copyOf(objectives);
    }
}
