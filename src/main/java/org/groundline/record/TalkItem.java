package org.groundline.record;

import org.groundline.bank.Shown;

import java.util.UUID;

/// A safety-critical item that was not answered rightly in a counted sitting and has not been
/// talked through to the end.
///
/// @param language of what was shown, a BCP 47 tag
/// @param given the answer that counted, as it was given; empty where there is none
/// @param verdict `wrong` or `unanswered`
/// @param belief the id of the wrong idea behind the answer; empty where none is known
/// @param talks how many talks there were that did not settle it yet
public record TalkItem(
        UUID item,
        UUID sitting,
        String topic,
        Shown shown,
        String language,
        String given,
        String verdict,
        String belief,
        int talks) {}
