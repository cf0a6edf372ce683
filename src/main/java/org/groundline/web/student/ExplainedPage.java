package org.groundline.web.student;

import org.groundline.web.brief.BriefLink;
import org.groundline.web.request.Frame;

/// An item after its answer in practice.
///
/// @param place module and topic
public record ExplainedPage(
        Frame frame,
        ItemWords words,
        String topic,
        String place,
        BriefLink brief,
        ExplainedItem item) {}
