package org.hearthway.program.ui;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.hearthway.program.engine.Load;

/** The numbers of a line as they were typed, and what they say. */
final class TypedNumbers {

    private static final BigDecimal GRAMS = BigDecimal.valueOf(1000);

    private final Map<Amount, String> typed = new EnumMap<>(Amount.class);

    String text(Amount number) {
        return typed.getOrDefault(number, "");
    }

    void put(Amount number, String text) {
        typed.put(number, text);
    }

    /** Nothing stands there for a number that is none. */
    void put(Amount number, int value) {
        typed.put(number, value > 0 ? String.valueOf(value) : "");
    }

    void putKilograms(Amount number, Load.Weight weight) {
        typed.put(
                number,
                BigDecimal.valueOf(weight.grams())
                        .divide(GRAMS)
                        .stripTrailingZeros()
                        .toPlainString());
    }

    /** What stands there; 0 for nothing, and below every bound for what is no number. */
    int number(Amount number) {
        var text = text(number).strip();
        if (text.isEmpty()) {
            return 0;
        }
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException notANumber) {
            return -1;
        }
    }

    /** What stands there, if anything does. */
    Optional<Integer> given(Amount number) {
        return text(number).isBlank() ? Optional.empty() : Optional.of(number(number));
    }

    /** Whether it lies within its bound. */
    boolean holds(Amount number) {
        return number.bound().holds(number(number));
    }

    /** What it is done against; empty when what was typed cannot be. */
    Optional<Load> load(Against against, Amount kilograms, Amount band) {
        return switch (against) {
            case BODY -> Optional.of(new Load.Body());
            case WEIGHT -> grams(text(kilograms)).map(Load.Weight::new);
            case BAND -> holds(band) ? Optional.of(new Load.Band(number(band))) : Optional.empty();
        };
    }

    /** Grams of what was typed in kilograms, with a point or a comma; empty when it is none of 1 g to 200 kg. */
    private static Optional<Integer> grams(String typed) {
        try {
            var grams = new BigDecimal(typed.strip().replace(',', '.'))
                    .multiply(GRAMS)
                    .setScale(0, RoundingMode.HALF_UP)
                    .intValueExact();
            return grams >= 1 && grams <= 200_000 ? Optional.of(grams) : Optional.empty();
        } catch (ArithmeticException | NumberFormatException notAWeight) {
            return Optional.empty();
        }
    }
}
