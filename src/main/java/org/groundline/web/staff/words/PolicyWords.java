package org.groundline.web.staff.words;

/// The words of the policy.
public interface PolicyWords {
    String policy();

    String rule();

    String value();

    String passMark();

    String topicItems();

    String numericShare();

    String studentsToSpeak();

    String changePolicy();

    String policyHint();

    String enterVersion();

    String percent();

    String items();

    String studentsUnit();

    String version(int version, String since);

    /// Returns the words in a language; English where there are none in it yet.
    static PolicyWords in(String language) {
        return new EnglishPolicyWords();
    }
}
