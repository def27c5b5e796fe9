package org.hearthway.pump.ui;

import com.vaadin.flow.component.Focusable;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.HasValue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;

/**
 * One look at what stands in a form. Keeps apart what is wrong, which is said while a person types, and what is not there
 * yet, which is said when the form is sent.
 */
final class Reading {

    private final Map<HasValidation, Problem> wrong = new LinkedHashMap<>();
    private final Map<HasValidation, Problem> lacking = new LinkedHashMap<>();

    /** What was typed as a quantity; empty when nothing was typed, or it is none. */
    <F extends HasValue<?, BigDecimal> & HasValidation, T> Optional<T> amount(F field, Function<BigDecimal, T> as) {
        return value(field).flatMap(typed -> with(field, () -> as.apply(typed)));
    }

    /** What stands in a field; what cannot be read is wrong. */
    <V, F extends HasValue<?, V> & HasValidation> Optional<V> value(F field) {
        if (field.isEmpty() && holdsText(field)) {
            wrong(field, Problem.at("", "pump.problem.unreadable"));
        }
        return field.getOptionalValue();
    }

    /** The browser knows that something stands there even when it is no number, day or time. */
    private static boolean holdsText(Object field) {
        return field instanceof com.vaadin.flow.component.HasElement element
                && element.getElement().getProperty("_hasInputValue", false);
    }

    /** The same, of what must be there. */
    <V, F extends HasValue<?, V> & HasValidation> Optional<V> needed(F field) {
        var value = value(field);
        if (value.isEmpty() && !wrong.containsKey(field)) {
            lacks(field, "pump.problem.missing");
        }
        return value;
    }

    /** What comes of something, or what is wrong with it. */
    <T> Optional<T> with(HasValidation field, Supplier<T> making) {
        try {
            return Optional.of(making.get());
        } catch (Invalid invalid) {
            wrong(field, invalid.problems().get(0));
            return Optional.empty();
        }
    }

    /** The same of several fields: each problem goes to the field of its name. */
    <T> Optional<T> with(Map<String, HasValidation> named, HasValidation otherwise, Supplier<T> making) {
        try {
            return Optional.of(making.get());
        } catch (Invalid invalid) {
            invalid.problems().forEach(problem -> wrong(named.getOrDefault(problem.field(), otherwise), problem));
            return Optional.empty();
        }
    }

    /** Says that something is wrong; the first that is said of a field stands. */
    void wrong(HasValidation field, Problem problem) {
        wrong.putIfAbsent(field, problem);
    }

    /** Says that something is not there yet. */
    void lacks(HasValidation field, String key, Object... args) {
        lacking.putIfAbsent(field, Problem.at("", key, args));
    }

    boolean isWrong() {
        return !wrong.isEmpty();
    }

    /** Whether the form may be sent. */
    boolean isWhole() {
        return wrong.isEmpty() && lacking.isEmpty();
    }

    /** Takes over what another reading found. */
    void all(Reading other) {
        other.wrong.forEach(wrong::putIfAbsent);
        other.lacking.forEach(lacking::putIfAbsent);
    }

    /** Takes over what another reading found, as problems of one field. */
    void all(Reading other, HasValidation field, Function<Problem, Problem> told) {
        other.wrong.values().forEach(problem -> wrong(field, told.apply(problem)));
        other.lacking.values().forEach(problem -> lacking.putIfAbsent(field, told.apply(problem)));
    }

    /** Marks what is wrong and leaves the person where she types. */
    void mark(FormSay say) {
        wrong.forEach((field, problem) -> mark(field, say.say(problem)));
    }

    /** Marks everything and goes to the first of it. */
    void refuse(FormSay say) {
        var all = new ArrayList<HasValidation>();
        wrong.forEach((field, problem) -> {
            mark(field, say.say(problem));
            all.add(field);
        });
        lacking.forEach((field, problem) -> {
            mark(field, say.say(problem));
            all.add(field);
        });
        for (var field : all) {
            if (field instanceof Focusable<?> first) {
                first.focus();
                break;
            }
        }
    }

    private static void mark(HasValidation field, String says) {
        field.setErrorMessage(says);
        field.setInvalid(true);
    }
}
