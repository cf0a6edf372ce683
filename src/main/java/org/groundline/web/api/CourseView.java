package org.groundline.web.api;

import org.groundline.bank.Course;
import org.groundline.bank.Demonstration;
import org.groundline.bank.Module;
import org.groundline.bank.Objective;
import org.groundline.bank.Topic;

import java.util.List;

/// The syllabus, in the order in which it is taught.
record CourseView(String course, String title, String discipline, List<ModuleView> modules) {
    record ModuleView(
            String module,
            String title,
            List<TopicView> topics,
            List<DemonstrationView> demonstrations) {
        static ModuleView of(Module module) {
            return new ModuleView(
                    module.id(),
                    module.title(),
                    module.topics().stream().map(TopicView::of).toList(),
                    module.demonstrations().stream().map(DemonstrationView::of).toList());
        }
    }

    record TopicView(String topic, String title, List<ObjectiveView> objectives) {
        static TopicView of(Topic topic) {
            return new TopicView(
                    topic.id(),
                    topic.title(),
                    topic.objectives().stream().map(ObjectiveView::of).toList());
        }
    }

    record ObjectiveView(String objective, String text, String stage) {
        static ObjectiveView of(Objective objective) {
            return new ObjectiveView(objective.id(), objective.text(), objective.stage().word());
        }
    }

    record DemonstrationView(
            String demonstration, String title, String criteria, boolean neverOverridable) {
        static DemonstrationView of(Demonstration shown) {
            return new DemonstrationView(
                    shown.id(), shown.title(), shown.criteria(), shown.neverOverridable());
        }
    }

    static CourseView of(Course course) {
        return new CourseView(
                course.id(),
                course.title(),
                course.discipline(),
                course.modules().stream().map(ModuleView::of).toList());
    }
}
