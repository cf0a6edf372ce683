package org.groundline.bank;

import org.groundline.ledger.CanonicalJson;
import org.groundline.ledger.Digests;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// One page on a topic, to be read before it is practised.
public final class Brief {
    private final String topic;
    private final String module;
    private final String text;
    private final Map<String, Figure> figures;
    private final List<Citation> sources;
    private final String version;

    public Brief(
            String topic,
            String module,
            String text,
            Map<String, Figure> figures,
            List<Citation> sources) {
        this.topic = topic;
        this.module = module;
        this.text = text;
        this.figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
        this.sources = List.copyOf(sources);
        this.version = Digests.hex(CanonicalJson.of(Content.of(this)));
    }

    public String topic() {
        return topic;
    }

    /// The module of the topic.
    public String module() {
        return module;
    }

    /// The text in Markdown, as [BriefMarkdown][org.groundline.bank.brief.BriefMarkdown] reads it.
    public String text() {
        return text;
    }

    /// Its pictures by the destinations that the text gives them, in its order.
    public Map<String, Figure> figures() {
        return figures;
    }

    public List<Citation> sources() {
        return sources;
    }

    /// The SHA-256 of all that a reader sees, as hexadecimal text: any change of the text, of a
    /// source or of a picture makes another version.
    public String version() {
        return version;
    }
}
