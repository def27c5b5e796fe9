package org.hearthway.pump.engine;

import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;

/** How a pump is set to give its drug. */
public sealed interface Dosing {

    /** The drug it gives at each moment of the pump's clock, over and over. */
    Pace pace(Concentration strength);

    /** What it gives in 24 hours, in the mean of its days. */
    default DrugRate perDay(Concentration strength) {
        return pace(strength).mean();
    }

    /** Days of whole rounds in a time; each round gives the same. */
    default long wholeDays(Elapsed time) {
        return time.wholeDays();
    }

    /** Whether a clock that was not set anew after a change of daylight saving shifts what is given in local time. */
    default boolean followsTheClock() {
        return false;
    }

    /** One rate, all the time. */
    static Dosing constant(DailyDose dose) {
        return new Constant(dose);
    }

    /** One rate, all the time, such as {@code constant("110")}. */
    static Dosing constant(String microgramsPerDay) {
        return new Constant(DailyDose.microgramsPerDay(microgramsPerDay));
    }

    /** The same day over and over. */
    static Dosing cycle(DayPattern day) {
        return new Cycle(day);
    }

    /** The same day over and over, of steps alone. */
    static Dosing cycle(Step... steps) {
        return new Cycle(DayPattern.of(steps));
    }

    /** A day for each day of the week. */
    static Dosing week(Map<DayOfWeek, DayPattern> days) {
        return new Week(days);
    }

    /** Nothing is given. */
    static Dosing stopped() {
        return new Stopped();
    }

    /** A flow that was set when the pump was made; the dose is strength times flow. */
    static Dosing fixedFlow(FlowRate flow) {
        return new FixedFlow(flow);
    }

    /** One rate, all the time. */
    record Constant(DailyDose dose) implements Dosing {
        @Override
        public Pace pace(Concentration strength) {
            return Pace.even(dose.rate());
        }
    }

    /**
     * The same day over and over.
     *
     * @param day its total lies within the bounds of a {@link DailyDose}
     */
    record Cycle(DayPattern day) implements Dosing {

        /** @throws Invalid when boluses overlap or the total is no daily dose */
        public Cycle {
            Totals.dose(Pace.of(List.of(day)).mean());
        }

        @Override
        public Pace pace(Concentration strength) {
            return Pace.of(List.of(day));
        }

        /** The total of 24 hours. */
        public DailyDose dose() {
            return Totals.dose(Pace.of(List.of(day)).mean());
        }

        @Override
        public boolean followsTheClock() {
            return true;
        }
    }

    /**
     * A day for each day of the week, from midnight to midnight of the pump's clock. A bolus belongs to the day on
     * which it begins and runs into the next one.
     *
     * @param days all seven; the total of each lies within the bounds of a {@link DailyDose}
     */
    record Week(Map<DayOfWeek, DayPattern> days) implements Dosing {

        /** @throws Invalid when a day is missing, boluses overlap or a total is no daily dose */
        public Week {
            if (days.size() < DayOfWeek.values().length) {
                throw new Invalid(Problem.at("days", "pump.problem.week"));
            }
            days = Collections.unmodifiableMap(new EnumMap<>(days));
            Totals.ofDays(Pace.of(List.copyOf(days.values())));
        }

        @Override
        public Pace pace(Concentration strength) {
            return Pace.of(List.copyOf(days.values()));
        }

        /** What is given from midnight to midnight, Monday first. */
        public List<DailyDose> doses() {
            return Totals.ofDays(Pace.of(List.copyOf(days.values())));
        }

        @Override
        public long wholeDays(Elapsed time) {
            return time.wholeDays() / days.size() * days.size();
        }

        @Override
        public boolean followsTheClock() {
            return true;
        }
    }

    /** Nothing is given. */
    record Stopped() implements Dosing {
        @Override
        public Pace pace(Concentration strength) {
            return Pace.even(new DrugRate(Mass.NONE.exact()));
        }
    }

    /** A flow that was set when the pump was made. */
    record FixedFlow(FlowRate flow) implements Dosing {
        @Override
        public Pace pace(Concentration strength) {
            return Pace.even(flow.at(strength));
        }
    }
}
