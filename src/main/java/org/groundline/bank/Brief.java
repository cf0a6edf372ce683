package org.groundline.bank;

import org.groundline.ledger.CanonicalJson;
import org.groundline.ledger.Digests;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// One page on a topic, to be read before it is practised.
///
/// @param module of the topic
/// @param text in Markdown, as [BriefMarkdown][org.groundline.bank.brief.BriefMarkdown] reads it
/// @param figures its pictures by the destinations that the text gives them, in its order
public record Brief(
        String topic,
        String module,
        String text,
        Map<String, Figure> figures,
        List<Citation> sources) {
    public Brief {
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
        sources = List.copyOf(sources);
    }

    /// The SHA-256 of all that a reader sees, as hexadecimal text: any change of the text, of a
    /// source or of a picture makes another version.
    public String version() {
        return Digests.hex(CanonicalJson.of(Content.of(this)));
    }
}
