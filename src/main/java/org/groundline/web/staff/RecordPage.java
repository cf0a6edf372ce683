package org.groundline.web.staff;

import org.groundline.bank.Shown;
import org.groundline.database.SubjectId;
import org.groundline.diagram.Purpose;
import org.groundline.record.Attempt;
import org.groundline.record.ModuleRecord;
import org.groundline.record.ModuleState;
import org.groundline.record.SignOff;
import org.groundline.record.StudentRecord;
import org.groundline.record.TalkItem;
import org.groundline.school.Intake;
import org.groundline.web.brief.BriefLink;
import org.groundline.web.brief.BriefWords;
import org.groundline.web.request.Figures;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Percent;
import org.groundline.web.request.Returned;
import org.groundline.web.request.Times;
import org.groundline.web.staff.words.RecordWords;
import org.groundline.web.staff.words.SharedWords;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/// A student's record as a page.
///
/// @param names the people who appear in the record, by subject
/// @param reasons of reversals, by sign-off
/// @param briefs of each module, by its id
/// @param beliefs what is wrong about each belief, by its id
public record RecordPage(
        Frame frame,
        RecordWords words,
        SharedWords shared,
        Times times,
        StudentRecord record,
        List<Intake> intakes,
        Map<UUID, String> names,
        Map<UUID, String> reasons,
        Map<String, String> beliefs,
        Map<String, List<BriefLink>> briefs,
        BriefWords briefWords,
        boolean maySign,
        boolean mayEnter,
        Returned form) {
    /// What is missing in one module.
    ///
    /// @param address of the module's part of the page
    public record Missing(String address, String module, List<String> things) {}

    public String address() {
        return frame.root() + "/students/" + record.student().subject().value();
    }

    /// What stands between the student and the sign-offs, module by module; those signed off are
    /// left out.
    public List<Missing> missing() {
        return record.modules().stream()
                .filter(m -> m.standing().isEmpty())
                .map(m -> new Missing("#" + m.module().id(), m.module().title(), missing(m)))
                .toList();
    }

    private List<String> missing(ModuleRecord module) {
        List<String> things = new ArrayList<>();
        if (module.basis().isEmpty()) {
            things.add(module.sittingNow() ? words.testBeingSat() : words.testMissing());
        }
        if (!module.toTalkThrough().isEmpty()) {
            things.add(words.openTalks(module.toTalkThrough().size()));
        }
        module.toShow().forEach(d -> things.add(words.toShow(d.demonstration().title())));
        return things.isEmpty() ? List.of(words.signatureMissing()) : things;
    }

    /// The briefs of a module that there are.
    public List<BriefLink> briefs(ModuleRecord module) {
        return briefs.getOrDefault(module.module().id(), List.of());
    }

    /// How many of them were read.
    public String readOf(ModuleRecord module) {
        List<BriefLink> all = briefs(module);
        int read = (int) all.stream().filter(BriefLink::isRead).count();
        return briefWords.readOf(read, all.size());
    }

    public StateWords state(ModuleRecord module) {
        return StateWords.of(module.state(), shared, times::day);
    }

    public boolean ready(ModuleRecord module) {
        return module.state() instanceof ModuleState.Ready;
    }

    /// What was given to an item that is to be talked through, with the idea behind it where one is
    /// known.
    public String given(TalkItem item) {
        String given =
                item.given().isEmpty() ? words.unanswered() : words.given() + ": " + text(item);
        return item.belief().isEmpty()
                ? given
                : given + ". " + beliefs.getOrDefault(item.belief(), item.belief());
    }

    /// The drawing beside its stem, as HTML.
    public String figures(TalkItem item) {
        return Figures.html(item.shown().figures(), Purpose.STEM, "figure-" + item.item());
    }

    private static String text(TalkItem item) {
        return switch (item.shown()) {
            case Shown.Choice choice ->
                    item.given() + ", " + choice.options().get(item.given().charAt(0) - 'A');
            case Shown.Number number -> item.given();
        };
    }

    public String attempt(Attempt attempt) {
        return words.attempt(
                attempt.hundredths(),
                attempt.possible(),
                Percent.gained(attempt.hundredths(), attempt.possible(), attempt.passMark()),
                times.day(attempt.handedInAt()));
    }

    /// A person's name; what is left where it was erased.
    public String name(SubjectId subject) {
        return names.getOrDefault(subject.value(), shared.erased());
    }

    public String reason(SignOff signOff) {
        return reasons.getOrDefault(signOff.id(), shared.erased());
    }
}
