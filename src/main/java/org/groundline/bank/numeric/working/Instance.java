package org.groundline.bank.numeric.working;

import java.util.Map;

/// A template computed for one set of drawn values. Not to be changed by whoever gets it.
public final class Instance {
    private final double[] values;
    private final double answer;
    private final double[] mistakes;
    private final Map<String, Double> drawing;

    Instance(double[] values, double answer, double[] mistakes) {
        this(values, answer, mistakes, Map.of());
    }

    private Instance(
            double[] values, double answer, double[] mistakes, Map<String, Double> drawing) {
        this.values = values;
        this.answer = answer;
        this.mistakes = mistakes;
        this.drawing = drawing;
    }

    Instance withDrawing(Map<String, Double> itsValues) {
        return new Instance(values, answer, mistakes, itsValues);
    }

    /// The values of the drawing, in SI, by name; empty where there is none.
    Map<String, Double> drawing() {
        return drawing;
    }

    /// The drawn value or step at this place, in SI.
    public double value(int place) {
        return values[place];
    }

    /// The unrounded answer, in its unit.
    public double answer() {
        return answer;
    }

    /// What the mistake at this place computes, in the answer's unit.
    public double mistake(int place) {
        return mistakes[place];
    }
}
