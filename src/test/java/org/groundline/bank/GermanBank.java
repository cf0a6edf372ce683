package org.groundline.bank;

import java.nio.file.Path;
import java.util.Optional;

/// A copy of the small sound bank whose questions are also in German. Nobody has confirmed yet
/// which English the German follows, until [#confirmed] does so as a translator would.
record GermanBank(SmallBank bank) {
    static final String QUESTIONS = "de/EQU/EQU-1-harness.yaml";
    static final String IDEAS = "de/misconceptions.yaml";
    static final String SYLLABUS = "de/syllabus.yaml";

    static GermanBank copiedTo(Path folder) {
        SmallBank bank = SmallBank.copiedTo(folder);
        bank.write(
                QUESTIONS,
                """
                topic: EQU-1
                questions:
                  - id: leg-straps-open-at-launch
                    stem: Was geschieht, wenn jemand mit *offenen* Beingurten startet?
                    options:
                      - Der Pilot kann aus dem Gurtzeug rutschen.
                      - Der Sitz ist etwas weniger bequem.
                      - Nichts, der Sitz hält den Piloten.
                    rationale: >
                      Nur die Beingurte verhindern, dass der Pilot hinausrutscht. Weder Bequemlichkeit noch die
                      Form des Sitzes ersetzen sie.
                  - id: lowest-sink-rate
                    stem: Welche dieser Sinkraten ist die kleinste?
                    options:
                      - 3,5 m/s
                      - 1,2 m/s
                      - 10 m/s
                    rationale: Die kleinste Sinkrate ist die kleinste Zahl, denn Sinken zählt positiv.
                """);
        bank.write(
                IDEAS,
                """
                misconceptions:
                  - id: straps-only-for-comfort
                    wrong: Beingurte dienen nur der Bequemlichkeit.
                    right: Beingurte halten den Piloten im Gurtzeug.
                    feedback: damit hältst du die Beingurte für eine Bequemlichkeit
                  - id: harness-holds-by-itself
                    wrong: Ein gutes Gurtzeug hält ohne Gurte.
                    right: Nur geschlossene Gurte halten den Piloten.
                    feedback: damit traust du dem Sitz zu, den Piloten zu halten
                """);
        bank.write(
                SYLLABUS,
                """
                modules:
                  - id: EQU
                    title: Ausrüstung
                """);
        return new GermanBank(bank);
    }

    /// Takes a sheet on which every translation is said to be current.
    GermanBank confirmed() {
        take(sheet().replace(",stale,", ",current,"));
        return this;
    }

    String sheet() {
        return bank.load().translations().sheet("de", "EQU");
    }

    /// Takes a sheet as the command does.
    void take(String sheet) {
        bank.load()
                .translations()
                .take(sheet, "sheet.csv")
                .files()
                .forEach(
                        (file, text) ->
                                text.ifPresentOrElse(
                                        written -> bank.write(file, written),
                                        () -> bank.remove(file)));
    }

    /// What a look at a question in German finds.
    Optional<TranslatedQuestion> german(String id) {
        Questions questions = bank.load();
        return questions.translations().find("de", questions.question(id));
    }
}
