package org.groundline.diagram;

import java.util.List;

/// The words in drawings and their descriptions, in one language.
interface DiagramWords {
    /// The name of a value, as it stands in the picture.
    String term(Term term);

    /// A name with its value, or with a question mark.
    String labelled(String name, String value);

    /// What a motif shows, without a full stop.
    String title(Motif motif);

    /// The same in sentences, for who cannot see it.
    String about(Motif motif);

    String told(List<String> labels);

    String asked(List<String> names);

    String toScale();

    String notToScale();

    String heightsEnlarged(int times);

    /// A person in the picture has a known size.
    String personGivesScale();

    String axis(Term quantity, String unit);

    String airspeedAxis();

    String sinkAxis();

    /// A polar in words, from its slowest speed on.
    String polarPoints(List<PolarPoint> points);

    /// A speed and the sink rate there, as printed.
    record PolarPoint(String airspeed, String sinkRate) {}

    String wind();

    String tailwind();

    String risingAir();

    String bestGlide();

    String north();

    String tenKilometresAnHour();

    /// Arrows that would hide each other stand beside each other.
    String sideBySide();

    /// A bar in the picture gives its scale.
    String barShows(String length);

    String flightPath();

    String totalForce();

    String dryAdiabat();

    String dewPointLine();

    String seaLevel();

    String tooHighBy();

    String tooLowBy();

    /// Returns the words in a language; English where there are none in it yet.
    static DiagramWords in(String language) {
        return new EnglishDiagramWords();
    }
}
