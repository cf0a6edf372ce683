package org.groundline.web.api;

import org.groundline.bank.Belief;
import org.groundline.bank.Key;
import org.groundline.sitting.Item;
import org.groundline.sitting.KeptAnswer;
import org.groundline.sitting.Mark;
import org.groundline.sitting.Practices.Explained;
import org.groundline.sitting.Result.ItemResult;

import java.util.List;
import java.util.Optional;

/// An item with everything that explains it.
///
/// @param questionId the question's id in the bank; with the version it names what was asked
/// @param given the answer that counted; absent for an unanswered item
/// @param verdict `right`, `wrong` or `unanswered`
/// @param mistakenStep the position of the step that went wrong, from 1, where one is known
/// @param belief the wrong idea that the answer points to, where one is known
record ExplainedView(
        ItemView item,
        String questionId,
        String questionVersion,
        String objective,
        boolean safetyCritical,
        Optional<GivenView> given,
        String verdict,
        int marksHundredths,
        int possibleHundredths,
        Optional<BeliefView> belief,
        Optional<Integer> mistakenStep,
        KeyView key,
        String rationale,
        List<String> sources) {
    record BeliefView(String belief, String feedback, String right) {
        static BeliefView of(Belief belief) {
            return new BeliefView(belief.id(), belief.feedback(), belief.right());
        }
    }

    static ExplainedView of(Explained explained) {
        return of(
                explained.item(),
                explained.key(),
                explained.mark(),
                Optional.of(explained.answer()));
    }

    static ExplainedView of(ItemResult result) {
        return of(result.item(), result.key(), result.mark(), result.answer());
    }

    private static ExplainedView of(Item item, Key key, Mark mark, Optional<KeptAnswer> answer) {
        return new ExplainedView(
                ItemView.of(item),
                item.questionId(),
                item.version(),
                item.objective(),
                item.safetyCritical(),
                answer.map(GivenView::of),
                mark.verdict().word(),
                mark.hundredths(),
                mark.possible(),
                mark.belief().map(BeliefView::of),
                answer.flatMap(given -> mistakenStep(key, given)),
                KeyView.of(key),
                key.rationale(),
                key.sources());
    }

    private static Optional<Integer> mistakenStep(Key key, KeptAnswer given) {
        return key.findMistake(given.reading()).map(Key.Mistake::step).filter(step -> step > 0);
    }
}
