package org.groundline.web.author;

import org.groundline.bank.QuestionText;
import org.groundline.bank.QuestionText.Answer;
import org.groundline.bank.QuestionText.Place;
import org.groundline.web.request.Form;

import java.util.ArrayList;
import java.util.List;

/// The fields of the form for a fixed question.
final class FormText {
    static final int OPTIONS = 4;
    static final int SOURCES = 2;

    private FormText() {}

    static QuestionText blank(String objective, String jurisdiction) {
        return new QuestionText(
                topic(objective),
                "",
                objective,
                "recall",
                false,
                "",
                List.of(),
                "",
                List.of(),
                false,
                jurisdiction,
                "");
    }

    static QuestionText of(Form form) {
        return new QuestionText(
                topic(form.text("objective")),
                form.text("id").strip(),
                form.text("objective"),
                form.text("level"),
                form.text("safetyCritical").equals("yes"),
                text(form, "stem"),
                options(form),
                text(form, "rationale"),
                sources(form),
                form.text("practice").equals("yes"),
                form.text("jurisdiction"),
                form.text("illustration"));
    }

    /// The topic is what stands before the point.
    private static String topic(String objective) {
        return objective.split("\\.", 2)[0];
    }

    private static String text(Form form, String field) {
        return form.text(field).replace("\r\n", "\n").strip();
    }

    private static List<Answer> options(Form form) {
        List<Answer> options = new ArrayList<>();
        for (int i = 1; i <= OPTIONS; i++) {
            String text = text(form, "option" + i);
            String idea = form.text("idea" + i).strip();
            if (!text.isEmpty() || !idea.isEmpty()) {
                options.add(new Answer(text, form.text("key").equals(String.valueOf(i)), idea));
            }
        }
        return options;
    }

    private static List<Place> sources(Form form) {
        List<Place> sources = new ArrayList<>();
        for (int i = 1; i <= SOURCES; i++) {
            String source = form.text("source" + i);
            if (!source.isEmpty()) {
                sources.add(new Place(source, form.text("at" + i).strip()));
            }
        }
        return sources;
    }
}
