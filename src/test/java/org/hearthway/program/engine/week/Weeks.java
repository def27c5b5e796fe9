package org.hearthway.program.engine.week;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.Rhythm;
import org.hearthway.program.engine.Rhythm.Spread;
import org.hearthway.program.engine.week.Ask.Phase;
import org.hearthway.program.engine.week.FamilyWeek.Slot;

/** Weeks for tests, and a second statement of what must hold in them. */
final class Weeks {

    static final Set<DayOfWeek> ALL = EnumSet.allOf(DayOfWeek.class);
    static final LocalTime MORNING = LocalTime.of(7, 15);
    static final LocalTime EVENING = LocalTime.of(17, 0);

    private Weeks() {}

    /** A week and what is asked of it. */
    record Case(FamilyWeek week, List<Ask> asks, List<Placed> last) {
        WeekPlan plan() {
            return WeekPlanner.plan(week, asks, last);
        }
    }

    static Ask ask(String name, int minutes, int days) {
        return new Ask(
                name,
                Priority.SECOND,
                minutes,
                1,
                new Rhythm(days, Spread.ANY),
                ALL,
                Set.of(),
                Phase.SKILL,
                "",
                Set.of());
    }

    static Ask strength(String name, int minutes, int days, String... muscles) {
        return new Ask(
                name,
                Priority.SECOND,
                minutes,
                1,
                new Rhythm(days, Spread.ANY),
                ALL,
                Set.of(muscles),
                Phase.STRENGTH,
                "",
                Set.of());
    }

    static Ask with(Ask ask, Priority priority) {
        return new Ask(
                ask.exercise(),
                priority,
                ask.minutes(),
                ask.timesADay(),
                ask.rhythm(),
                ask.days(),
                ask.muscles(),
                ask.phase(),
                ask.equipment(),
                ask.helpers());
    }

    static Ask with(Ask ask, Phase phase, String equipment) {
        return new Ask(
                ask.exercise(),
                ask.priority(),
                ask.minutes(),
                ask.timesADay(),
                ask.rhythm(),
                ask.days(),
                ask.muscles(),
                phase,
                equipment,
                ask.helpers());
    }

    static Ask helped(Ask ask, String... helpers) {
        return new Ask(
                ask.exercise(),
                ask.priority(),
                ask.minutes(),
                ask.timesADay(),
                ask.rhythm(),
                ask.days(),
                ask.muscles(),
                ask.phase(),
                ask.equipment(),
                Set.of(helpers));
    }

    static Ask times(Ask ask, int timesADay) {
        return new Ask(
                ask.exercise(),
                ask.priority(),
                ask.minutes(),
                timesADay,
                ask.rhythm(),
                ask.days(),
                ask.muscles(),
                ask.phase(),
                ask.equipment(),
                ask.helpers());
    }

    /** A time each evening. */
    static FamilyWeek evenings(int minutes) {
        var slots = new ArrayList<Slot>();
        for (var day : DayOfWeek.values()) {
            slots.add(new Slot(day, EVENING, minutes, Set.of("mother")));
        }
        return new FamilyWeek(slots, Map.of());
    }

    /**
     * Fifteen exercises of a child who walks with help, and two parents: a short time on school mornings, a longer one
     * every afternoon, the father there in the evening and at the weekend.
     */
    static Case family() {
        var slots = new ArrayList<Slot>();
        for (var day : DayOfWeek.values()) {
            var isWeekend = day.compareTo(DayOfWeek.SATURDAY) >= 0;
            slots.add(new Slot(day, MORNING, isWeekend ? 25 : 12, Set.of("mother")));
            slots.add(new Slot(
                    day, EVENING, isWeekend ? 30 : 40, isWeekend ? Set.of("mother", "father") : Set.of("father")));
        }
        var week = new FamilyWeek(slots, Map.of(DayOfWeek.WEDNESDAY, 35));
        var asks = List.of(
                with(with(times(ask("calf-wall", 4, 7), 2), Phase.STRETCH, ""), Priority.FIRST),
                with(
                        helped(with(ask("hamstring-helper", 6, 6), Phase.STRETCH, "mat"), "mother", "father"),
                        Priority.FIRST),
                with(helped(with(ask("heel-cord-helper", 6, 5), Phase.STRETCH, "mat"), "father"), Priority.FIRST),
                with(with(strength("bridge", 5, 3, "hip"), Phase.STRENGTH, "mat"), Priority.FIRST),
                with(with(strength("sit-to-stand", 6, 3, "thigh"), Phase.STRENGTH, "chair"), Priority.FIRST),
                with(strength("step-up", 6, 3, "thigh", "calf"), Phase.STRENGTH, "step"),
                with(strength("side-lying-abduction", 5, 3, "hip"), Phase.STRENGTH, "mat"),
                with(strength("heel-raise", 4, 2, "calf"), Phase.STRENGTH, ""),
                helped(with(ask("walker-walk", 12, 4), Phase.SKILL, "walker"), "father", "mother"),
                with(ask("single-leg-stand", 4, 4), Phase.SKILL, ""),
                with(ask("march", 3, 7), Phase.WARM_UP, ""),
                with(with(ask("standing-frame", 20, 3), Phase.POSITION, "frame"), Priority.THIRD),
                with(with(ask("long-sit-reach", 5, 3), Phase.STRETCH, "mat"), Priority.THIRD),
                with(with(ask("ball-throw", 5, 3), Phase.SKILL, "ball"), Priority.THIRD),
                with(with(ask("wrist-stretch", 3, 5), Phase.STRETCH, ""), Priority.THIRD));
        return new Case(week, asks, List.of());
    }

    /** A week drawn by chance. */
    static Case any(Random random, int asks, int times) {
        var week = week(random, times);
        var all = new ArrayList<Ask>();
        for (int i = 0; i < asks; i++) {
            all.add(anyAsk(random, "e" + i));
        }
        var last = random.nextInt(3) == 0 ? List.<Placed>of() : last(random, week, all);
        return new Case(week, all, last);
    }

    private static FamilyWeek week(Random random, int times) {
        var starts = List.of(LocalTime.of(7, 0), LocalTime.of(12, 0), EVENING);
        var taken = new HashSet<String>();
        var slots = new ArrayList<Slot>();
        while (slots.size() < times) {
            var day = DayOfWeek.of(1 + random.nextInt(7));
            var start = starts.get(random.nextInt(starts.size()));
            if (taken.add(day + " " + start)) {
                slots.add(new Slot(day, start, 5 * (1 + random.nextInt(8)), helpers(random, 2)));
            }
        }
        var most = new EnumMap<DayOfWeek, Integer>(DayOfWeek.class);
        for (var day : DayOfWeek.values()) {
            if (random.nextInt(4) == 0) {
                most.put(day, 10 + 5 * random.nextInt(8));
            }
        }
        return new FamilyWeek(slots, most);
    }

    private static Set<String> helpers(Random random, int one) {
        var helpers = new HashSet<String>();
        for (var name : List.of("mother", "father")) {
            if (random.nextInt(one) == 0) {
                helpers.add(name);
            }
        }
        return helpers;
    }

    private static Ask anyAsk(Random random, String name) {
        var spread = Spread.values()[random.nextInt(Spread.values().length)];
        var isStrength = random.nextInt(3) == 0;
        var days = EnumSet.allOf(DayOfWeek.class);
        if (random.nextInt(4) == 0) {
            days.removeIf(day -> random.nextBoolean());
            days.add(DayOfWeek.of(1 + random.nextInt(7)));
        }
        return new Ask(
                name,
                Priority.values()[random.nextInt(3)],
                3 + random.nextInt(13),
                random.nextInt(5) == 0 ? 2 : 1,
                new Rhythm(spread == Spread.DAILY ? 7 : 1 + random.nextInt(4), spread),
                days,
                isStrength ? Set.of(random.nextBoolean() ? "hip" : "calf") : Set.of(),
                isStrength ? Phase.STRENGTH : Phase.values()[random.nextInt(5)],
                List.of("", "mat", "band", "step").get(random.nextInt(4)),
                random.nextInt(3) == 0 ? Set.of(random.nextBoolean() ? "mother" : "father") : Set.of());
    }

    private static List<Placed> last(Random random, FamilyWeek week, List<Ask> asks) {
        var last = new HashSet<Placed>();
        for (var ask : asks) {
            for (var slot : week.slots()) {
                if (random.nextInt(3) == 0) {
                    last.add(new Placed(ask.exercise(), slot.day(), slot.start()));
                }
            }
        }
        return List.copyOf(last);
    }

    /** Everything that must hold and does not, told by days and times alone; nothing when all is well. */
    static List<String> broken(FamilyWeek week, Collection<Ask> asks, Collection<Placed> placed) {
        var wrong = new ArrayList<String>();
        if (new HashSet<>(placed).size() < placed.size()) {
            wrong.add("twice in one time");
        }
        for (var slot : week.slots()) {
            if (minutes(asks, placed, slot.day(), slot.start()) > slot.minutes()) {
                wrong.add(slot + " is overfull");
            }
        }
        for (var day : DayOfWeek.values()) {
            if (minutes(asks, placed, day, null) > week.most().getOrDefault(day, 24 * 60)) {
                wrong.add(day + " is overfull");
            }
        }
        for (var ask : asks) {
            broken(week, ask, placed, wrong);
            for (var other : asks) {
                var shared = new HashSet<>(ask.muscles());
                shared.retainAll(other.muscles());
                for (var day : daysOf(ask, placed)) {
                    if (!shared.isEmpty() && daysOf(other, placed).contains(day.plus(1))) {
                        wrong.add(ask.exercise() + " and " + other.exercise() + " on " + day + " and the day after");
                    }
                }
            }
        }
        return wrong;
    }

    private static void broken(FamilyWeek week, Ask ask, Collection<Placed> placed, List<String> wrong) {
        var days = daysOf(ask, placed);
        for (var one : placed) {
            if (one.exercise().equals(ask.exercise())) {
                var slot = week.at(one.day(), one.start());
                if (slot.isEmpty()
                        || !ask.days().contains(one.day())
                        || !ask.helpers().isEmpty()
                                && ask.helpers().stream().noneMatch(slot.get().helpers()::contains)) {
                    wrong.add(one + " cannot be there");
                }
            }
        }
        for (var day : days) {
            if (placed.stream()
                            .filter(one -> one.exercise().equals(ask.exercise()) && one.day() == day)
                            .count()
                    > ask.timesADay()) {
                wrong.add(ask.exercise() + " too often on " + day);
            }
            if (ask.rhythm().spread().compareTo(Spread.ALTERNATE) >= 0 && days.contains(day.plus(1))) {
                wrong.add(ask.exercise() + " on following days");
            }
        }
        if (days.size() > ask.rhythm().days()) {
            wrong.add(ask.exercise() + " on too many days");
        }
        if (ask.rhythm().spread() == Spread.ALTERNATE
                && days.stream().filter(day -> !days.contains(day.plus(2))).count() > 1) {
            wrong.add(ask.exercise() + " with more than one long gap");
        }
    }

    static Set<DayOfWeek> daysOf(Ask ask, Collection<Placed> placed) {
        var days = EnumSet.noneOf(DayOfWeek.class);
        placed.stream().filter(one -> one.exercise().equals(ask.exercise())).forEach(one -> days.add(one.day()));
        return days;
    }

    private static int minutes(Collection<Ask> asks, Collection<Placed> placed, DayOfWeek day, LocalTime start) {
        var sum = 0;
        for (var one : placed) {
            if (one.day() == day && (start == null || one.start().equals(start))) {
                sum += asks.stream()
                        .filter(ask -> ask.exercise().equals(one.exercise()))
                        .mapToInt(Ask::minutes)
                        .sum();
            }
        }
        return sum;
    }
}
