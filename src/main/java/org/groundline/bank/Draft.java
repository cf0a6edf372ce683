package org.groundline.bank;

import java.util.Optional;

/// A question as its own file shows it.
///
/// @param question empty after noting what is wrong with it
record Draft(Claim claim, Optional<? extends Question> question) {
    /// The question, unless an earlier one has its id.
    Optional<Question> settle(Register<String> questions) {
        return claim.enter(questions) ? question.map(q -> q) : Optional.empty();
    }
}
