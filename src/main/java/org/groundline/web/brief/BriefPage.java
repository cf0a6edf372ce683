package org.groundline.web.brief;

import org.groundline.web.request.Frame;

/// A brief to be read.
///
/// @param version of the brief, whole, as the form sends it back
/// @param read whether the reader has said that they read it as it is
/// @param state the same in words, with the day
/// @param mayAcknowledge whether the reader can say so at all
/// @param practice where the topic is practised; empty for who may not
/// @param course where the course is; empty for who has none
/// @param module where all briefs of the module are
/// @param refused why an acknowledgement was not taken; empty where none was refused
public record BriefPage(
        Frame frame,
        BriefWords words,
        BriefSheet sheet,
        String version,
        boolean read,
        String state,
        boolean mayAcknowledge,
        String practice,
        String course,
        String module,
        String refused) {
    public String address() {
        return frame.root() + "/briefs/" + sheet.id();
    }
}
