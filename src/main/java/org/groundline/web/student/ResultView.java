package org.groundline.web.student;

import org.groundline.bank.Course;
import org.groundline.school.School;
import org.groundline.sitting.Item;
import org.groundline.sitting.Result;
import org.groundline.sitting.Result.ItemResult;
import org.groundline.sitting.Sitting;
import org.groundline.sitting.Verdict;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Percent;
import org.groundline.web.request.Times;
import org.groundline.web.student.ResultPage.Entry;
import org.groundline.web.student.ResultPage.Fact;
import org.groundline.web.student.ResultPage.Lead;
import org.groundline.web.student.ResultPage.TopicRow;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;

/// Puts the page of a result together.
///
/// @param openTalks the items that still wait for a talk
record ResultView(
        Course course, School school, ResultWords words, Result result, Set<UUID> openTalks) {
    private static final int SHORT_VERSION = 12;

    ResultPage page(Frame frame, String student, boolean own) {
        return new ResultPage(
                frame,
                words,
                lead(),
                facts(student),
                result.topics().stream()
                        .map(t -> row(title(t.topic()), t.hundredths(), t.possible()))
                        .toList(),
                row(words.all(), result.hundredths(), result.possible()),
                entries(this::waits),
                entries(i -> !isRight(i) && !waits(i)),
                entries(ResultView::isRight),
                own ? practiceOfFirstMissed(frame) : "");
    }

    private Lead lead() {
        var marks = new Marks(result.hundredths(), result.possible());
        String sentence =
                words.marks(
                        marks.gained(),
                        marks.all(),
                        marks.share(result.rules()),
                        Percent.mark(result.rules().passMark()));
        int talks = (int) result.items().stream().filter(this::waits).count();
        return new Lead(
                sentence,
                result.passed(),
                result.passed() ? words.passed() : words.failed(),
                talks > 0
                        ? words.talks(talks)
                        : result.toTalkThrough() > 0 ? words.allTalkedOver() : "");
    }

    private List<Fact> facts(String student) {
        int policy = result.sitting().facts().policy();
        return List.of(
                new Fact(words.student(), student),
                new Fact(words.handedIn(), handedIn()),
                new Fact(
                        words.rules(),
                        words.rulesOf(policy, Percent.mark(result.rules().passMark()))),
                new Fact(words.markedBy(), words.versions(result.scoringVersion())));
    }

    private String handedIn() {
        Sitting.HandedIn sitting = result.sitting();
        String when = Times.of(school).dayAndTime(sitting.at());
        return switch (sitting.by()) {
            case "student" -> {
                Duration taken = Duration.between(sitting.facts().startedAt(), sitting.at());
                yield words.afterMinutes(when, taken.toMinutes());
            }
            case "clock" -> words.byTheClock(when);
            default -> words.byStaff(when);
        };
    }

    private TopicRow row(String title, int hundredths, int possible) {
        var marks = new Marks(hundredths, possible);
        return new TopicRow(title, marks.gained(), marks.all(), marks.share(result.rules()));
    }

    private List<Entry> entries(Predicate<ItemResult> which) {
        return result.items().stream().filter(which).map(this::entry).toList();
    }

    private static boolean isRight(ItemResult item) {
        return item.mark().verdict() == Verdict.RIGHT;
    }

    private boolean waits(ItemResult item) {
        return openTalks.contains(item.item().id());
    }

    private Entry entry(ItemResult marked) {
        Item item = marked.item();
        var explained =
                ExplainedItem.of(
                        ItemWords.in(school.language()),
                        item,
                        marked.key(),
                        marked.mark(),
                        marked.answer().map(a -> Answered.given(school, item, a)));
        return new Entry(
                explained,
                title(item.topic()),
                item.safetyCritical(),
                waits(marked),
                words.version(item.questionId(), item.version().substring(0, SHORT_VERSION)));
    }

    private String practiceOfFirstMissed(Frame frame) {
        return result.items().stream()
                .filter(i -> !isRight(i))
                .map(i -> i.item().topic())
                .filter(t -> course.findTopic(t).isPresent())
                .findFirst()
                .map(topic -> frame.root() + "/practice/" + topic)
                .orElse("");
    }

    /// A topic that left the syllabus keeps its id as its name.
    private String title(String topic) {
        return course.findTopic(topic).map(t -> t.title()).orElse(topic);
    }
}
