package org.hearthway.path.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.path.ClinicValues;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.engine.Fitted;
import org.hearthway.path.engine.Fitted.Left;
import org.hearthway.path.engine.PathValues;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.ValueFlaw;
import org.hearthway.path.engine.ValuePlace;
import org.hearthway.path.engine.ValueRules;
import org.springframework.stereotype.Component;

/** Which of a clinic's own values can be: refusals name the value, its bound and the way out. */
@Component
class ValueBounds {

    private final ValueWords words;

    ValueBounds(ValueWords words) {
        this.words = words;
    }

    void reason(String reason) {
        var length = reason.strip().length();
        if (length < ClinicValues.REASON_MIN || length > ClinicValues.REASON_MAX) {
            throw new Invalid(
                    Problem.at("reason", "path.problem.reason", ClinicValues.REASON_MIN, ClinicValues.REASON_MAX));
        }
    }

    /** Refuses values for what is not there, and a change that changes nothing. */
    void places(Template shipped, ValueHistory before, Map<ValuePlace, Optional<Amount>> wishes) {
        var there = PathValues.of(shipped);
        var own = before.amounts();
        var problems = new ArrayList<Problem>();
        wishes.forEach((place, wish) -> {
            var says = there.get(place);
            var fits = says != null
                    && wish.filter(amount -> !amount.getClass().equals(says.getClass()))
                            .isEmpty();
            // what is gone can still be dropped
            if (!fits && !(wish.isEmpty() && own.containsKey(place))) {
                problems.add(
                        Problem.at(ClinicValues.field(place), "path.values.problem.gone", words.whole(shipped, place)));
            }
        });
        if (problems.isEmpty()
                && wishes.entrySet().stream()
                        .allMatch(wish -> wish.getValue().equals(Optional.ofNullable(own.get(wish.getKey()))))) {
            problems.add(Problem.at("", "path.values.problem.same"));
        }
        Invalid.ifAny(problems);
    }

    /** Refuses values that break a rule to which shipped paths are held. */
    void rules(Template shipped, Fitted before, Map<ValuePlace, Optional<Amount>> wishes) {
        var wanted = new java.util.HashMap<>(before.own());
        wishes.forEach(
                (place, wish) -> wish.ifPresentOrElse(amount -> wanted.put(place, amount), () -> wanted.remove(place)));
        var path = PathValues.with(shipped, wanted);
        Invalid.ifAny(ValueRules.flaws(path).stream()
                .map(flaw -> problem(path, flaw, wishes.keySet()))
                .toList());
    }

    private Problem problem(Template path, ValueFlaw flaw, Set<ValuePlace> wished) {
        if (flaw instanceof ValueFlaw.OutOfBounds bounds) {
            return Problem.at(
                    ClinicValues.field(bounds.at()),
                    "path.values.problem.bounds",
                    words.whole(path, bounds.at()),
                    words.both(bounds.least()),
                    words.both(bounds.most()));
        }
        if (flaw instanceof ValueFlaw.OutOfOrder order) {
            var tooLong = wished.contains(order.shorter()) || !wished.contains(order.longer());
            var at = tooLong ? order.shorter() : order.longer();
            var bound = tooLong ? order.longer() : order.shorter();
            return Problem.at(
                    ClinicValues.field(at),
                    tooLong ? "path.values.problem.too-long" : "path.values.problem.too-short",
                    words.whole(path, at),
                    words.name(bound),
                    words.both(Objects.requireNonNull(PathValues.of(path).get(bound))));
        }
        var clash = ((ValueFlaw.NoDay) flaw).clash();
        return Problem.at(
                wished.size() == 1 ? ClinicValues.field(wished.iterator().next()) : "",
                "path.values.problem.clash",
                clash.stage().name(),
                words.rules(path, clash));
    }

    /** Refuses what would push out a value that counts now, or would not count itself. */
    void together(Template shipped, Fitted before, Fitted after, Set<ValuePlace> wished) {
        var out = after.left().stream()
                .filter(left -> before.own().containsKey(left.place()) || wished.contains(left.place()))
                .map(Left::place)
                .toList();
        if (!out.isEmpty()) {
            throw new Invalid(Problem.at("", "path.values.problem.together", named(shipped, out)));
        }
    }

    /** The change that is to be taken back. */
    ValueHistory.Made counting(ValueHistory history, long number) {
        return history.change(number)
                .filter(made -> !history.undone().contains(number))
                .orElseThrow(() -> new Invalid(Problem.at("", "path.problem.undone")));
    }

    private Bilingual named(Template shipped, List<ValuePlace> places) {
        return ValueWords.list(
                places.stream().map(place -> words.whole(shipped, place)).toList());
    }
}
