package org.groundline.sitting;

import org.groundline.bank.Shown;

import java.util.UUID;

/// A question as posed to one student: what the student may see. Frozen for ever.
///
/// @param position its number on the paper, from 1
/// @param questionId the question's id in the bank
/// @param version the version of the question, or of its translation; a SHA-256 in hexadecimal
/// @param language the language of its texts and of its key's, a BCP 47 tag
/// @param safetyCritical whether a wrong answer must be talked through before a sign-off
public record Item(
        UUID id,
        int position,
        String questionId,
        String version,
        String language,
        String topic,
        String objective,
        boolean safetyCritical,
        Shown shown) {}
