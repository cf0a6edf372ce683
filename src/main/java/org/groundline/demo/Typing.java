package org.groundline.demo;

import java.math.BigDecimal;

/// The ways in which people type a number: with the unit or without, with a point or a comma.
record Typing(BigDecimal number) {
    private static final int COMMA_IS_CLEAR = 2; // three digits after it could be thousands

    static Typing of(BigDecimal number) {
        return new Typing(number);
    }

    String in(String unit, Chance chance) {
        String plain = number.toPlainString();
        boolean clear = number.scale() > 0 && number.scale() <= COMMA_IS_CLEAR;
        String marked = clear && chance.happens(0.4) ? plain.replace('.', ',') : plain;
        return unit.isEmpty() || chance.happens(0.5) ? marked : marked + " " + unit;
    }
}
