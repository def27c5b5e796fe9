package org.hearthway.path.engine;

/**
 * Where a value of a path stands that a clinic may have otherwise than the file says.
 *
 * @param stage the stage's identifier
 * @param kind which of its values
 * @param part of several rules, visits or rules of care the one it belongs to, named by what it says and never by its
 *     number, so that another one never takes its place; empty where the stage has but one
 */
public record ValuePlace(String stage, Kind kind, String part) {

    /** The rule that a value belongs to. */
    public enum Rule {
        BEGINS,
        LASTS,
        REPEATS,
        APART,
        PRECAUTION,
        VISIT,
        FAMILY_TASK,
        STAFF_TASK
    }

    /** The values of a path. */
    public enum Kind {
        BEGINS_EARLIEST(Rule.BEGINS),
        BEGINS_USUAL(Rule.BEGINS),
        BEGINS_LATEST(Rule.BEGINS),
        LASTS_LEAST(Rule.LASTS),
        LASTS_USUAL(Rule.LASTS),
        LASTS_MOST(Rule.LASTS),
        REPEATS_EVERY(Rule.REPEATS),
        REPEATS_TIMES(Rule.REPEATS),
        APART_DAYS(Rule.APART),
        PRECAUTION_FROM(Rule.PRECAUTION),
        PRECAUTION_UNTIL(Rule.PRECAUTION),
        VISIT_AFTER(Rule.VISIT),
        VISIT_WITHIN(Rule.VISIT),
        VISIT_EVERY(Rule.VISIT),
        VISIT_TIMES(Rule.VISIT),
        FAMILY_TASK_DUE(Rule.FAMILY_TASK),
        STAFF_TASK_DUE(Rule.STAFF_TASK);

        private final Rule rule;

        Kind(Rule rule) {
            this.rule = rule;
        }

        /** What it belongs to. */
        public Rule rule() {
            return rule;
        }

        /** Whether it can lie before the day from which it counts. */
        public boolean canBeBefore() {
            return this == VISIT_AFTER || this == FAMILY_TASK_DUE || this == STAFF_TASK_DUE;
        }
    }

    /** The other value of the same rule. */
    public ValuePlace beside(Kind other) {
        return new ValuePlace(stage, other, part);
    }

    /** Whether both belong to one rule. */
    public boolean isOfOneRuleWith(ValuePlace other) {
        return stage.equals(other.stage) && part.equals(other.part) && kind.rule() == other.kind.rule();
    }
}
