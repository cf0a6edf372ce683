package org.groundline.web.api;

import org.groundline.database.SubjectId;
import org.groundline.record.ModuleRecord;
import org.groundline.record.SignOff;
import org.groundline.record.StudentRecord;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/// A student's record with the evidence.
record RecordView(NamedView student, List<ModuleRecordView> modules) {
    record ModuleRecordView(
            String module,
            String title,
            StateView state,
            List<AttemptView> attempts,
            List<TalkView> toTalkThrough,
            List<ShownView> demonstrations,
            List<SignOffView> signOffs) {}

    /// @param staff finds who entered something
    /// @param reasons finds the reason of a reversal
    static RecordView of(
            StudentRecord record,
            Function<SubjectId, NamedStaffView> staff,
            Function<SignOff.Reversal, Optional<String>> reasons) {
        return new RecordView(
                new NamedView(record.student().subject().value(), record.student().name()),
                record.modules().stream().map(m -> module(m, staff, reasons)).toList());
    }

    private static ModuleRecordView module(
            ModuleRecord module,
            Function<SubjectId, NamedStaffView> staff,
            Function<SignOff.Reversal, Optional<String>> reasons) {
        return new ModuleRecordView(
                module.module().id(),
                module.module().title(),
                StateView.of(module.state()),
                module.attempts().stream().map(AttemptView::of).toList(),
                module.toTalkThrough().stream().map(TalkView::of).toList(),
                module.demonstrations().stream().map(d -> ShownView.of(d, staff)).toList(),
                module.signOffs().stream().map(s -> SignOffView.of(s, staff, reasons)).toList());
    }
}
