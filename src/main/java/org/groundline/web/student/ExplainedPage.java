package org.groundline.web.student;

import org.groundline.web.request.Frame;

/// An item after its answer in practice.
///
/// @param place module and topic
public record ExplainedPage(
        Frame frame, ItemWords words, String topic, String place, ExplainedItem item) {}
