package org.hearthway.choosing.engine;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/** A statement about a child, true, false or not known by what is known of the child. */
public sealed interface Condition {

    /** Whether it holds. */
    Truth in(Known known);

    /** Every fact it reads; its age is not a fact. */
    Set<String> facts();

    /** Whether it reads the age. */
    boolean readsAge();

    /** The facts that are not known and for want of which it is not known; empty when it is known. */
    Set<String> missing(Known known);

    /**
     * A fact has one of these choices.
     *
     * @param choices at least one
     */
    record Is(String fact, Set<String> choices) implements Condition {

        public Is {
            choices = Set.copyOf(choices);
        }

        @Override
        public Truth in(Known known) {
            return known.answer(fact)
                    .map(held -> Truth.of(held.stream().anyMatch(choices::contains)))
                    .orElse(Truth.UNKNOWN);
        }

        @Override
        public Set<String> facts() {
            return Set.of(fact);
        }

        @Override
        public boolean readsAge() {
            return false;
        }

        @Override
        public Set<String> missing(Known known) {
            return known.answer(fact).isPresent() ? Set.of() : facts();
        }
    }

    /**
     * The age in completed years lies within bounds, both allowed: a child is 9 up to the day before it is 10.
     *
     * @param from youngest, if there is a bound
     * @param to oldest, if there is a bound
     */
    record Aged(Optional<Integer> from, Optional<Integer> to) implements Condition {

        @Override
        public Truth in(Known known) {
            return Truth.of(from.filter(least -> known.years() < least).isEmpty()
                    && to.filter(most -> known.years() > most).isEmpty());
        }

        @Override
        public Set<String> facts() {
            return Set.of();
        }

        @Override
        public boolean readsAge() {
            return true;
        }

        @Override
        public Set<String> missing(Known known) {
            return Set.of();
        }
    }

    /** Several conditions together. */
    sealed interface Several extends Condition {

        /** The conditions. */
        List<Condition> of();

        @Override
        default Set<String> facts() {
            return union(of(), Condition::facts);
        }

        @Override
        default boolean readsAge() {
            return of().stream().anyMatch(Condition::readsAge);
        }

        @Override
        default Set<String> missing(Known known) {
            return in(known) == Truth.UNKNOWN ? union(of(), each -> each.missing(known)) : Set.of();
        }
    }

    /** All of them hold. */
    record All(List<Condition> of) implements Several {

        public All {
            of = List.copyOf(of);
        }

        @Override
        public Truth in(Known known) {
            return of.stream().map(each -> each.in(known)).reduce(Truth.YES, Truth::and);
        }
    }

    /** At least one of them holds. */
    record Any(List<Condition> of) implements Several {

        public Any {
            of = List.copyOf(of);
        }

        @Override
        public Truth in(Known known) {
            return of.stream().map(each -> each.in(known)).reduce(Truth.NO, Truth::or);
        }
    }

    /** It does not hold. */
    record Not(Condition of) implements Condition {

        @Override
        public Truth in(Known known) {
            return of.in(known).not();
        }

        @Override
        public Set<String> facts() {
            return of.facts();
        }

        @Override
        public boolean readsAge() {
            return of.readsAge();
        }

        @Override
        public Set<String> missing(Known known) {
            return of.missing(known);
        }
    }

    private static Set<String> union(List<Condition> of, Function<Condition, Set<String>> facts) {
        var all = new TreeSet<String>();
        of.forEach(each -> all.addAll(facts.apply(each)));
        return Set.copyOf(all);
    }
}
