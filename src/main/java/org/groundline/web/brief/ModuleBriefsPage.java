package org.groundline.web.brief;

import org.groundline.web.request.Frame;

import java.util.List;

/// All briefs of a module, a sheet each.
public record ModuleBriefsPage(Frame frame, BriefWords words, List<BriefSheet> sheets) {
    public ModuleBriefsPage {
        sheets = List.copyOf(sheets);
    }
}
