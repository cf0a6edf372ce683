package org.groundline.web.student;

import org.groundline.web.brief.BriefLink;
import org.groundline.web.request.Frame;

import java.util.UUID;

/// An item to be practised.
///
/// @param place module and topic
/// @param clientId made for this rendering, so that a double click is one answer
public record PracticePage(
        Frame frame,
        ItemWords words,
        String topic,
        String place,
        BriefLink brief,
        int position,
        UUID sitting,
        UUID itemId,
        UUID clientId,
        int seat,
        AskedItem item) {}
