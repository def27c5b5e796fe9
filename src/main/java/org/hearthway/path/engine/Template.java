package org.hearthway.path.engine;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;

/**
 * A pathway as the clinic plans it: stages one after another, each with visits, tasks and precautions.
 *
 * @param id identifier, the file's name
 * @param version version of the content
 * @param name in trade terms, such as "Nerve-root surgery (SDR)"
 * @param stages in order
 * @param advice for whom it is usually chosen, as sources say; in the order it is told
 */
public record Template(String id, int version, Bilingual name, List<Stage> stages, List<Advice> advice) {

    public Template {
        stages = List.copyOf(stages);
        advice = List.copyOf(advice);
    }

    /** The stage with this identifier, if there is one. */
    public Optional<Stage> stage(String stage) {
        return stages.stream().filter(s -> s.id().equals(stage)).findFirst();
    }

    /** Where a gap is counted from. */
    public enum Edge {
        START,
        END
    }

    /**
     * A rule that gives a date: so long after an edge of another stage.
     *
     * @param stage the stage counted from; empty for the first, whose start is the day the path begins
     * @param edge its start or its end
     * @param earliest smallest gap
     * @param usual the gap that is planned
     * @param latest largest gap
     */
    public record After(Optional<String> stage, Edge edge, Period earliest, Period usual, Period latest) {

        private static final LocalDate LEAP_CYCLE = LocalDate.of(2024, 1, 1);

        /** Whether earliest, usual and latest keep this order from any day of a leap cycle; months differ in length. */
        public boolean isOrdered() {
            return LEAP_CYCLE
                    .datesUntil(LEAP_CYCLE.plusYears(4))
                    .allMatch(day -> !day.plus(earliest).isAfter(day.plus(usual))
                            && !day.plus(usual).isAfter(day.plus(latest)));
        }
    }

    /**
     * One stage.
     *
     * @param id identifier within the path
     * @param name in family words
     * @param says what happens, in family words
     * @param begins the rule for its first day
     * @param lasts usual length from first to last day; zero for a single day
     * @param until the later stage whose first day ends this one, if its length is not a fixed one; {@code lasts} is
     *     then not used
     * @param onOpenDays whether its first day must be an open day of the clinic
     * @param signal whether its date is set by the clinic on a named day, as an operation is
     * @param visits visits to book in it
     * @param tasks what the family does in it
     * @param precautions what is forbidden or done with care
     * @param why why then, in family words
     * @param source of the figures, or "common practice, no source"
     */
    public record Stage(
            String id,
            Bilingual name,
            Bilingual says,
            After begins,
            Period lasts,
            Optional<String> until,
            boolean onOpenDays,
            boolean signal,
            List<VisitNeed> visits,
            List<Bilingual> tasks,
            List<Precaution> precautions,
            Bilingual why,
            String source) {

        public Stage {
            visits = List.copyOf(visits);
            tasks = List.copyOf(tasks);
            precautions = List.copyOf(precautions);
        }
    }

    /**
     * A visit that a stage asks for.
     *
     * @param id identifier within the stage
     * @param kind a kind of visit, see {@code content/visits}
     * @param after gap from the stage's first day; negative for a visit that prepares the stage
     * @param before days in which it must lie, counted from there
     * @param every gap after which it comes again, counted from the first; empty for a single visit
     * @param times how often in all, at least 1
     */
    public record VisitNeed(String id, String kind, Period after, Period before, Optional<Period> every, int times) {}

    /**
     * A rule of care.
     *
     * @param tag exercises carry the same tag, for instance {@code passive-trunk-twist}
     * @param forbids true when exercises with the tag are locked, false when they only warn
     * @param from gap from the stage's first day
     * @param until gap from the stage's first day to the day the rule no longer holds
     * @param says in family words
     * @param source of the rule
     */
    public record Precaution(String tag, boolean forbids, Period from, Period until, Bilingual says, String source) {}
}
