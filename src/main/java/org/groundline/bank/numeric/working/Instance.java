package org.groundline.bank.numeric.working;

/// A template computed for one set of drawn values. Not to be changed by whoever gets it.
public final class Instance {
    private final double[] values;
    private final double answer;
    private final double[] mistakes;

    Instance(double[] values, double answer, double[] mistakes) {
        this.values = values;
        this.answer = answer;
        this.mistakes = mistakes;
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
