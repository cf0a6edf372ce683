package org.groundline.bank.numeric.goal;

import org.groundline.bank.numeric.source.Decimals;
import org.groundline.bank.numeric.source.Faults;
import org.groundline.bank.numeric.source.Symbols;
import org.groundline.bank.numeric.source.TemplateSource.AnswerSource;
import org.groundline.measure.Rounding;
import org.groundline.measure.Rounding.Side;
import org.groundline.measure.Unit;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/// Reads how a template's answer is printed and compared.
public final class KeyReader {
    private static final Pattern PERCENT = Pattern.compile("(?<share>[0-9.]+) ?%");
    private static final String NO_SIGN = "none";
    private static final double WIDEST = 0.2;
    private static final double USUAL = 0.02;

    /// Units of which 2 % means nothing.
    private static final Map<String, Double> ABSOLUTE =
            Map.of("hPa", 1.0, "K", 0.5, "°C", 0.5, "°", 1.0);

    private final Faults faults;

    /// @param faults takes what is wrong with the answer
    public KeyReader(Faults faults) {
        this.faults = faults;
    }

    /// The key, or nothing after noting what is wrong with it.
    public Optional<Key> read(AnswerSource source) {
        Optional<Unit> unit = Symbols.unit("answer.unit", source.unit(), faults);
        Optional<Rounding> rounding = rounding(source);
        Optional<Range> range = Range.read("answer.between", source.between(), faults);
        checkSign(source.sign(), range);
        if (unit.isEmpty() || rounding.isEmpty() || range.isEmpty()) {
            return Optional.empty();
        }
        double halfDigit = rounding.get().step().doubleValue() / 2;
        return tolerance(source.tolerance(), unit.get(), halfDigit)
                .map(
                        t ->
                                new Key(
                                        unit.get(),
                                        rounding.get(),
                                        t,
                                        range.get(),
                                        source.sign().isEmpty()));
    }

    /// What has no sign is never below zero, or a right answer would be read as another.
    private void checkSign(Optional<String> sign, Optional<Range> range) {
        if (sign.filter(text -> !text.equals(NO_SIGN)).isPresent()) {
            faults.add(
                    "answer.sign",
                    "“%s” is no sign".formatted(sign.get()),
                    "write none where the answer is positive by convention, or leave it out");
        } else if (sign.isPresent() && range.filter(r -> r.least() < 0).isPresent()) {
            faults.add(
                    "answer.sign",
                    "there is no sign, yet the plausible range begins below zero",
                    "let the range begin at zero or above, or leave the sign out");
        }
    }

    private Optional<Rounding> rounding(AnswerSource source) {
        Optional<BigDecimal> step =
                source.round().flatMap(Decimals::find).filter(s -> s.signum() > 0);
        if (step.isEmpty()) {
            faults.add(
                    "answer.round",
                    source.round().map("“%s” is no step"::formatted).orElse("it is missing"),
                    "give the step of the printed answer, such as 50 or 0.1");
        }
        Optional<Side> side = side(source.side().orElse("nearest"));
        return step.flatMap(s -> side.map(to -> new Rounding(s, to)));
    }

    private Optional<Side> side(String text) {
        for (Side side : Side.values()) {
            if (side.name().toLowerCase(Locale.ROOT).equals(text)) {
                return Optional.of(side);
            }
        }
        faults.add("answer.side", "“%s” is no side".formatted(text), "use down, up or nearest");
        return Optional.empty();
    }

    private Optional<Tolerance> tolerance(Optional<String> text, Unit unit, double halfDigit) {
        if (text.isEmpty()) {
            double absolute = ABSOLUTE.getOrDefault(unit.symbol(), 0.0);
            return Optional.of(new Tolerance(absolute > 0 ? 0 : USUAL, absolute, halfDigit));
        }
        var percent = PERCENT.matcher(text.get().strip());
        if (percent.matches()) {
            return Decimals.find(percent.group("share"))
                    .map(share -> share.doubleValue() / 100)
                    .filter(share -> share > 0 && share <= WIDEST)
                    .map(share -> new Tolerance(share, 0, halfDigit))
                    .or(() -> noTolerance(text.get()));
        }
        return Decimals.find(text.get())
                .map(BigDecimal::doubleValue)
                .filter(amount -> amount >= halfDigit)
                .map(amount -> new Tolerance(0, amount, halfDigit))
                .or(() -> noTolerance(text.get()));
    }

    private Optional<Tolerance> noTolerance(String text) {
        faults.add(
                "answer.tolerance",
                "“%s” is no tolerance".formatted(text),
                "write a share up to 20 % such as 2 %, or an amount of at least half the rounding"
                        + " in the answer's unit");
        return Optional.empty();
    }
}
