package org.hearthway.path.engine;

import java.time.LocalDate;
import java.time.Period;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;

/**
 * A pathway as the clinic plans it: stages one after another, each with visits, tasks and precautions.
 *
 * @param id identifier, the file's name
 * @param version version of the content
 * @param name in trade terms, such as "Nerve-root surgery (SDR)"
 * @param chosenAt the stage at which it begins for a child whose tests were done and whose team and family chose it;
 *     empty for the first one
 * @param stages in order
 * @param advice for whom it is usually chosen, as sources say; in the order it is told
 */
public record Template(
        String id, int version, Bilingual name, Optional<String> chosenAt, List<Stage> stages, List<Advice> advice) {

    public Template {
        stages = List.copyOf(stages);
        advice = List.copyOf(advice);
    }

    /** The stage with this identifier, if there is one. */
    public Optional<Stage> stage(String stage) {
        return stages.stream().filter(s -> s.id().equals(stage)).findFirst();
    }

    /** The stages in front of one; none when it is not of this path. */
    public List<Stage> before(String stage) {
        var front = stages.stream().takeWhile(s -> !s.id().equals(stage)).toList();
        return front.size() == stages.size() ? List.of() : front;
    }

    /**
     * The stages in front of one whose days are needed when a path begins at that one: those from which alone a stage
     * behind it counts, which would otherwise get a day that means nothing.
     *
     * @param known stages in front whose days are known
     * @return by the stage whose day is needed the first that counts from it, in the order of the path
     */
    public Map<Stage, Stage> neededBefore(String stage, Set<String> known) {
        var front = before(stage);
        var ids = front.stream().map(Stage::id).toList();
        var needed = new LinkedHashMap<Stage, Stage>();
        for (var behind : stages.subList(Math.min(front.size() + 1, stages.size()), stages.size())) {
            var anchors = behind.timing().begins().stream()
                    .flatMap(rule -> rule.stage().stream())
                    .toList();
            if (!anchors.isEmpty()
                    && ids.containsAll(anchors)
                    && anchors.stream().noneMatch(known::contains)) {
                front.stream()
                        .filter(one -> anchors.contains(one.id()))
                        .min(Comparator.comparing(one -> one.timing().optional()))
                        .ifPresent(anchor -> needed.putIfAbsent(anchor, behind));
            }
        }
        return needed;
    }

    /** Where a gap is counted from. */
    public enum Edge {
        START,
        END
    }

    /** Who on the team is responsible for a stage or a task. */
    public enum Responsible {
        SURGEON,
        PHYSICIAN,
        NURSE,
        THERAPIST,
        COORDINATOR
    }

    /**
     * A rule about a stage's first day: so long after an edge of another stage.
     *
     * @param stage the stage counted from; empty for the first, whose start is the day the path begins
     * @param edge its start or its end
     * @param earliest smallest gap
     * @param usual the gap that is planned; empty for a rule that only bounds
     * @param latest largest gap; empty when there is none
     */
    public record After(
            Optional<String> stage, Edge edge, Period earliest, Optional<Period> usual, Optional<Period> latest) {

        private static final LocalDate LEAP_CYCLE = LocalDate.of(2024, 1, 1);

        /** Whether earliest, usual and latest keep this order from any day of a leap cycle; months differ in length. */
        public boolean isOrdered() {
            return LEAP_CYCLE.datesUntil(LEAP_CYCLE.plusYears(4)).allMatch(this::isOrderedFrom);
        }

        private boolean isOrderedFrom(LocalDate day) {
            var least = day.plus(earliest);
            var most = latest.map(day::plus).orElse(LocalDate.MAX);
            var aim = usual.map(day::plus).orElse(least);
            return !least.isAfter(aim) && !aim.isAfter(most);
        }
    }

    /**
     * How long a stage lasts, from its first to its last day; zero for a single day.
     *
     * @param least shortest
     * @param usual the length that is planned
     * @param most longest; empty when nothing bounds it
     */
    public record Length(Period least, Period usual, Optional<Period> most) {

        /** About so long; a single day lasts no longer than that. */
        public static Length about(Period usual) {
            return new Length(Period.ZERO, usual, usual.isZero() ? Optional.of(usual) : Optional.empty());
        }
    }

    /**
     * How a stage comes again, always counted from the first time.
     *
     * @param every gap
     * @param times how often in all; empty when it goes on until another stage
     * @param until the later stage before which the last one lies
     */
    public record Repeat(Period every, Optional<Integer> times, Optional<String> until) {}

    /** A stage whose first day lies at least so many days from another's, before or after it. */
    public record Apart(String from, int days) {}

    /**
     * When a stage is.
     *
     * @param begins rules for its first day; the first that applies and has a usual gap gives the day aimed at
     * @param lasts its length; not used when it lasts until another
     * @param until the later stage whose first day ends this one, if its length is not a fixed one
     * @param onOpenDays whether its first day must be an open day of the clinic
     * @param season the season in which its first day lies, if any
     * @param signal whether its date is set by the clinic on a named day, as an operation is
     * @param optional whether it is on a plan only when an outcome opens it or somebody adds it
     * @param repeats how it comes again, if it does
     * @param apart stages that it keeps away from
     */
    public record Timing(
            List<After> begins,
            Length lasts,
            Optional<String> until,
            boolean onOpenDays,
            Optional<String> season,
            boolean signal,
            boolean optional,
            Optional<Repeat> repeats,
            List<Apart> apart) {

        public Timing {
            begins = List.copyOf(begins);
            apart = List.copyOf(apart);
        }
    }

    /**
     * What people do in a stage.
     *
     * @param family what the family does
     * @param staff what the team does
     * @param entry what must hold before it begins, in staff words
     * @param exit what must hold before it ends, in staff words
     */
    public record Duties(List<FamilyTask> family, List<StaffTask> staff, List<Bilingual> entry, List<Bilingual> exit) {

        public Duties {
            family = List.copyOf(family);
            staff = List.copyOf(staff);
            entry = List.copyOf(entry);
            exit = List.copyOf(exit);
        }
    }

    /** What somebody does in a stage. */
    public sealed interface Task {

        /** In the words of the path as it came, which tell it from the others of its stage. */
        String name();

        /** In the words that are read. */
        Bilingual does();

        /** Due so long after the stage's first day, before it when negative; empty when it has no day. */
        Optional<Period> due();
    }

    /**
     * What a family does.
     *
     * @param name as the path as it came says it, which stays when the clinic says it in words of its own
     * @param does in the words that are read
     * @param due so long after the stage's first day, before it when negative; empty when it has no day
     */
    public record FamilyTask(String name, Bilingual does, Optional<Period> due) implements Task {

        /** In the words of the path as it came. */
        public FamilyTask(Bilingual does, Optional<Period> due) {
            this(does.en(), does, due);
        }
    }

    /** What the team does, who, and by when; counted as for the family. */
    public record StaffTask(Bilingual does, Responsible who, Optional<Period> due) implements Task {

        @Override
        public String name() {
            return does.en();
        }
    }

    /**
     * One way in which a stage ends. A plan expects the first until another is recorded.
     *
     * @param id identifier within the stage
     * @param name in staff words
     * @param tells what the family reads, if it reads anything
     * @param opens later stages that come on the plan
     * @param skips later stages that leave it
     * @param endsPath whether everything later leaves the plan and choosing is open again
     * @param returnsTo the stage at or before this one to which the way goes back, on the day of the outcome
     * @param device what it says of a device in the body, if it does
     */
    public record Outcome(
            String id,
            Bilingual name,
            Optional<Bilingual> tells,
            Set<String> opens,
            Set<String> skips,
            boolean endsPath,
            Optional<String> returnsTo,
            Optional<DeviceNote> device) {

        public Outcome {
            opens = Set.copyOf(opens);
            skips = Set.copyOf(skips);
        }

        /** One that says nothing of a device. */
        public Outcome(
                String id,
                Bilingual name,
                Optional<Bilingual> tells,
                Set<String> opens,
                Set<String> skips,
                boolean endsPath,
                Optional<String> returnsTo) {
            this(id, name, tells, opens, skips, endsPath, returnsTo, Optional.empty());
        }
    }

    /**
     * What an outcome says of a device in the body, so that the record of devices is expected to say it, too.
     *
     * @param at the stage at or before this one whose day shows that it happened, when the way came back to it; empty
     *     when it happened by the day of the outcome
     */
    public record DeviceNote(DeviceFate fate, Optional<String> at) {}

    /** What becomes of a device. */
    public enum DeviceFate {
        /** The pump came out, whatever of its catheter stayed. */
        PUMP_OUT,
        /** A new pump or a new catheter came in. */
        PUMP_RENEWED,
        /** Some part of the stimulator came out. */
        STIMULATOR_PART_OUT,
        /** The generator came out; leads may have stayed. */
        GENERATOR_OUT,
        /** Every part of the stimulator came out, leads included. */
        STIMULATOR_OUT,
        /** A new part of the stimulator came in. */
        STIMULATOR_RENEWED
    }

    /**
     * One stage.
     *
     * @param id identifier within the path
     * @param name in family words
     * @param says what happens, in family words
     * @param why why then, in family words
     * @param source of the figures, or "common practice, no source"
     * @param who is responsible
     * @param timing when it is
     * @param duties what people do in it
     * @param visits visits to book in it
     * @param precautions what is forbidden or done with care
     * @param outcomes how it can end, the expected one first; empty when there is but one way
     * @param signs signs that matter in it, see {@code content/signs}
     */
    public record Stage(
            String id,
            Bilingual name,
            Bilingual says,
            Bilingual why,
            String source,
            Responsible who,
            Timing timing,
            Duties duties,
            List<VisitNeed> visits,
            List<Precaution> precautions,
            List<Outcome> outcomes,
            List<String> signs) {

        public Stage {
            visits = List.copyOf(visits);
            precautions = List.copyOf(precautions);
            outcomes = List.copyOf(outcomes);
            signs = List.copyOf(signs);
        }

        /** The outcome with this identifier, if the stage has it. */
        public Optional<Outcome> outcome(String outcome) {
            return outcomes.stream().filter(o -> o.id().equals(outcome)).findFirst();
        }
    }

    /**
     * A visit that a stage asks for.
     *
     * @param id identifier within the stage
     * @param kind a kind of visit, see {@code content/visits}
     * @param after gap from the stage's first day; negative for a visit that prepares the stage
     * @param within how long after that it may lie at most
     * @param every gap after which it comes again, counted from the first; empty for a single visit
     * @param times how often in all, at least 1; not used when it goes on until another stage
     * @param until the later stage before which the last one lies
     * @param source of the rhythm, if it has one of its own
     */
    public record VisitNeed(
            String id,
            String kind,
            Period after,
            Period within,
            Optional<Period> every,
            int times,
            Optional<String> until,
            Optional<String> source) {}

    /**
     * A rule of care.
     *
     * @param tag exercises carry the same tag, for instance {@code passive-trunk-twist}
     * @param forbids true when exercises with the tag are locked, false when they only warn
     * @param from gap from the stage's first day
     * @param until gap from the stage's first day to the day the rule no longer holds; empty when it holds as long as
     *     the stage lasts
     * @param says in family words
     * @param source of the rule
     */
    public record Precaution(
            String tag, boolean forbids, Period from, Optional<Period> until, Bilingual says, String source) {}
}
