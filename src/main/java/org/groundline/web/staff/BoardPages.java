package org.groundline.web.staff;

import io.javalin.http.Context;

import org.groundline.bank.Module;
import org.groundline.record.StudentRecord;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Intake;
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Routes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// The class board: students by modules.
public final class BoardPages {
    private final Doors doors;

    BoardPages(Doors doors) {
        this.doors = doors;
    }

    /// @param chosen the intake looked at; empty for all
    public record BoardPage(
            Frame frame,
            StaffWords words,
            List<Intake> intakes,
            Optional<UUID> chosen,
            List<Module> modules,
            List<Row> rows,
            String asOf) {
        /// One student.
        public record Row(String address, String name, List<StateWords> cells) {}
    }

    void addTo(Routes routes) {
        routes.get("/{school}/board", Action.READ_BOARD, this::show);
    }

    private void show(Context ctx, Actor actor) {
        Optional<UUID> intake = Form.queryId(ctx, "intake");
        List<StudentRecord> records = doors.records().listBoard(actor, intake);
        StaffWords words = StaffWords.in(actor.school().language());
        var dates = new Dates(actor.school());
        Frame frame = Frame.of(ctx, actor, words.classBoard());
        var page =
                new BoardPage(
                        frame,
                        words,
                        doors.people().listIntakes(actor.school()),
                        intake,
                        doors.bank().course().modules(),
                        records.stream().map(r -> row(frame, r, words, dates)).toList(),
                        dates.dayAndTime(doors.foundation().now()));
        ctx.render("staff/board.jte", Map.of("page", page));
    }

    private static BoardPage.Row row(
            Frame frame, StudentRecord record, StaffWords words, Dates dates) {
        return new BoardPage.Row(
                frame.root() + "/students/" + record.student().subject().value(),
                record.student().name(),
                record.modules().stream()
                        .map(m -> StateWords.of(m.state(), words, dates))
                        .toList());
    }
}
