package org.groundline.web.api;

import org.groundline.formulary.Input;
import org.groundline.formulary.Quantity;

import java.util.List;

/// A quantity that can be computed.
///
/// @param unit of the result; empty for a plain number
record QuantityView(
        String name, String question, List<InputView> inputs, String unit, String source) {
    /// @param low from where on a value is sensible, in the unit
    /// @param high up to where it is
    record InputView(String name, String unit, double low, double high) {
        static InputView of(Input input) {
            return new InputView(input.name(), input.unit().symbol(), input.low(), input.high());
        }
    }

    static QuantityView of(Quantity quantity) {
        return new QuantityView(
                quantity.name(),
                quantity.question(),
                quantity.inputs().stream().map(InputView::of).toList(),
                quantity.unit().symbol(),
                quantity.source());
    }
}
