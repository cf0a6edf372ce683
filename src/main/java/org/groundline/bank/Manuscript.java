package org.groundline.bank;

import org.groundline.bank.file.Finding;

import java.util.List;
import java.util.Optional;

/// What somebody wrote as one question, and what the bank says to it.
///
/// @param id the id that it names; empty where it names none
/// @param question empty where it is not sound
public record Manuscript(String id, Optional<Question> question, List<Finding> findings) {
    /// What stands for the name of a file in the findings.
    static final String FILE = "text";

    public Manuscript {
        findings = List.copyOf(findings);
    }
}
