package org.groundline.web.api;

import org.groundline.record.ModuleRecord;
import org.groundline.record.StudentRecord;

import java.util.List;
import java.util.UUID;

/// The class board: students by name, and where each stands in each module.
record BoardView(List<RowView> students) {
    record RowView(UUID subject, String name, List<CellView> modules) {
        static RowView of(StudentRecord record) {
            return new RowView(
                    record.student().subject().value(),
                    record.student().name(),
                    record.modules().stream().map(CellView::of).toList());
        }
    }

    record CellView(String module, StateView state) {
        static CellView of(ModuleRecord module) {
            return new CellView(module.module().id(), StateView.of(module.state()));
        }
    }

    static BoardView of(List<StudentRecord> records) {
        return new BoardView(records.stream().map(RowView::of).toList());
    }
}
