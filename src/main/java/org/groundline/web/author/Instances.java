package org.groundline.web.author;

import org.groundline.bank.NumericQuestion;
import org.groundline.bank.Question;
import org.groundline.bank.Questions;

import java.util.List;
import java.util.stream.LongStream;

/// How a question turns out: twenty items of a template, one of a fixed question.
final class Instances {
    private static final int MANY = 20;

    private Instances() {}

    static List<PosedView> of(Questions bank, Question question, BankWords words) {
        int count = question instanceof NumericQuestion ? MANY : 1;
        return LongStream.rangeClosed(1, count)
                .mapToObj(
                        seed -> PosedView.of(words, bank.pose(question, seed), "instance-" + seed))
                .toList();
    }
}
