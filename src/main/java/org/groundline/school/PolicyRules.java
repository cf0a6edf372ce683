package org.groundline.school;

import org.groundline.error.Refusal;

/// The rule numbers of a school.
///
/// @param passMark share of the marks of a paper that passes, in hundredths of a percent (7 500 is
///   75 %)
/// @param topicItems items of a topic that a sitting must hold before the topic's pass rate may
///   count it
/// @param numericShare largest share of numeric items in a paper, in percent
/// @param studentsToSpeak different students below which a pass rate stays silent
public record PolicyRules(int passMark, int topicItems, int numericShare, int studentsToSpeak) {
    /// The shipped defaults. Pass mark: 75 % of the marks of each paper, Part-FCL FCL.025 (a
    /// default; it does not bind foot-launched gliders). Topic items, numeric share, students to
    /// speak: Groundline's own choice.
    public static final PolicyRules DEFAULT = new PolicyRules(7_500, 10, 15, 5);

    public PolicyRules {
        require(
                passMark >= 1 && passMark <= 10_000,
                "passMark",
                "The pass mark lies between 0.01 % and 100 %.");
        require(
                topicItems >= 1 && topicItems <= 100,
                "topicItems",
                "A topic needs between 1 and 100 items.");
        require(
                numericShare >= 0 && numericShare <= 100,
                "numericShare",
                "A share lies between 0 and 100 %.");
        require(
                studentsToSpeak >= 5,
                "studentsToSpeak",
                "Below five students a rate would speak of single people.");
    }

    private static void require(boolean holds, String field, String otherwise) {
        if (!holds) {
            throw new Refusal.Invalid(field, otherwise);
        }
    }

    /// Whether marks reach the pass mark, by cross-multiplication: nothing is rounded.
    public boolean passes(int hundredths, int possible) {
        return reaches(passMark, hundredths, possible);
    }

    /// Whether marks reach a mark that is given in hundredths of a percent.
    public static boolean reaches(int mark, int hundredths, int possible) {
        return possible > 0 && 10_000L * hundredths >= (long) mark * possible;
    }
}
