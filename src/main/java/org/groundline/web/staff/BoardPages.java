package org.groundline.web.staff;

import io.javalin.http.Context;

import org.groundline.bank.Module;
import org.groundline.record.StudentRecord;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Routes;
import org.groundline.web.request.Times;
import org.groundline.web.staff.words.BoardWords;
import org.groundline.web.staff.words.SharedWords;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;

/// The class board: students by modules. A row opens to the student's record, which begins with
/// what is missing.
public final class BoardPages {
    private final Doors doors;

    BoardPages(Doors doors) {
        this.doors = doors;
    }

    /// @param asOf when it was drawn, for the board on the wall
    public record BoardPage(
            Frame frame,
            BoardWords words,
            IntakeFilter filter,
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
        BoardWords words = BoardWords.in(actor.school().language());
        Times times = Times.of(actor.school());
        Instant now = doors.foundation().now();
        Frame frame = Frame.of(ctx, actor, words.classBoard());
        IntakeFilter filter = IntakeFilter.on(frame, doors, actor, intake);
        Function<Instant, String> day = at -> times.shortDay(at, now);
        var page =
                new BoardPage(
                        frame,
                        words,
                        filter,
                        doors.bank().course().modules(),
                        records.stream().map(r -> row(frame, r, filter.words(), day)).toList(),
                        words.asOf(filter.chosenName(), times.dayAndTime(now)));
        ctx.render("staff/board.jte", Map.of("page", page));
    }

    private static BoardPage.Row row(
            Frame frame, StudentRecord record, SharedWords words, Function<Instant, String> day) {
        return new BoardPage.Row(
                frame.root() + "/students/" + record.student().subject().value(),
                record.student().name(),
                record.modules().stream().map(m -> StateWords.of(m.state(), words, day)).toList());
    }
}
