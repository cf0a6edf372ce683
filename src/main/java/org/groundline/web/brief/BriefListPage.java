package org.groundline.web.brief;

import org.groundline.web.request.Frame;

import java.util.List;

/// All briefs there are.
public record BriefListPage(Frame frame, BriefWords words, List<ModulePart> modules) {
    public BriefListPage {
        modules = List.copyOf(modules);
    }

    /// @param print where all of its briefs are; empty where it has none
    public record ModulePart(String id, String title, String print, List<BriefLink> briefs) {
        public ModulePart {
            briefs = List.copyOf(briefs);
        }
    }
}
