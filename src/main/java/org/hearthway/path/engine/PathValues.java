package org.hearthway.path.engine;

import java.time.Period;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.path.engine.Amount.Gap;
import org.hearthway.path.engine.Amount.Times;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Apart;
import org.hearthway.path.engine.Template.Duties;
import org.hearthway.path.engine.Template.FamilyTask;
import org.hearthway.path.engine.Template.Length;
import org.hearthway.path.engine.Template.Precaution;
import org.hearthway.path.engine.Template.Repeat;
import org.hearthway.path.engine.Template.StaffTask;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.Template.Task;
import org.hearthway.path.engine.Template.Timing;
import org.hearthway.path.engine.Template.VisitNeed;
import org.hearthway.path.engine.ValuePlace.Kind;

/**
 * The values of a path that vary between centres: gaps, lengths, rhythms, how long a rule of care holds, by when a task is
 * due. A stage of a single day has no length, the day on which the path begins has no gap, and some tasks have no day.
 */
public final class PathValues {

    private interface Use {
        Amount at(ValuePlace place, Amount says);
    }

    /** So much of a task's words tells it from the others of its stage. */
    private static final int NAME_MOST = 100;

    private PathValues() {}

    /** All of them, in the order of the path. */
    public static Map<ValuePlace, Amount> of(Template path) {
        var values = new LinkedHashMap<ValuePlace, Amount>();
        each(path, (place, says) -> {
            values.put(place, says);
            return says;
        });
        return values;
    }

    /**
     * The same path with other values at some places.
     *
     * @param own each of the kind of amount that stands there
     */
    public static Template with(Template path, Map<ValuePlace, Amount> own) {
        return own.isEmpty() ? path : each(path, own::getOrDefault);
    }

    /** The part by which one of a stage's rules of care is named. */
    public static String part(Stage stage, Precaution rule) {
        var names = new Names();
        return stage.precautions().stream()
                .map(each -> Map.entry(each, names.next(name(each))))
                .filter(each -> each.getKey().equals(rule))
                .findFirst()
                .map(Map.Entry::getValue)
                .orElseThrow();
    }

    /** The part by which one of a stage's rules for its first day is named. */
    public static String part(After rule) {
        return rule.stage().orElse("") + ":" + rule.edge();
    }

    /** The part by which one of a stage's tasks is named, among those of the family or of the team. */
    public static String part(Stage stage, Task task) {
        var duties = stage.duties();
        var names = new Names();
        return (task instanceof FamilyTask ? duties.family() : duties.staff())
                .stream()
                        .map(each -> Map.entry(each, names.next(shortly(each.name()))))
                        .filter(each -> each.getKey().equals(task))
                        .findFirst()
                        .map(Map.Entry::getValue)
                        .orElseThrow();
    }

    private static String shortly(String name) {
        return name.substring(0, Math.min(NAME_MOST, name.length()));
    }

    private static String name(Precaution rule) {
        return rule.tag() + (rule.forbids() ? "" : ":care");
    }

    /** Names that stand twice are numbered from the second on. */
    private static final class Names {
        private final Map<String, Integer> used = new HashMap<>();

        String next(String name) {
            int time = used.merge(name, 1, Integer::sum);
            return time == 1 ? name : name + "/" + time;
        }
    }

    private record At(String stage, String part, Use use) {

        Period gap(Kind kind, Period says) {
            return ((Gap) use.at(new ValuePlace(stage, kind, part), new Gap(says))).period();
        }

        Optional<Period> gap(Kind kind, Optional<Period> says) {
            return says.map(gap -> gap(kind, gap));
        }

        int times(Kind kind, int says) {
            return ((Times) use.at(new ValuePlace(stage, kind, part), new Times(says))).number();
        }
    }

    private static Template each(Template path, Use use) {
        return new Template(
                path.id(),
                path.version(),
                path.name(),
                path.chosenAt(),
                path.stages().stream().map(stage -> stage(stage, use)).toList(),
                path.advice());
    }

    private static Stage stage(Stage stage, Use use) {
        var timing = timing(stage.id(), stage.timing(), use);
        var care = new Names();
        var precautions = stage.precautions().stream()
                .map(rule -> precaution(rule, new At(stage.id(), care.next(name(rule)), use)))
                .toList();
        var visits = stage.visits().stream()
                .map(visit -> visit(visit, new At(stage.id(), visit.id(), use)))
                .toList();
        return new Stage(
                stage.id(),
                stage.name(),
                stage.says(),
                stage.why(),
                stage.source(),
                stage.who(),
                timing,
                duties(stage, use),
                visits,
                precautions,
                stage.outcomes(),
                stage.signs());
    }

    private static Timing timing(String stage, Timing timing, Use use) {
        var names = new Names();
        var begins = new ArrayList<After>();
        for (var rule : timing.begins()) {
            begins.add(rule.stage().isEmpty() ? rule : rule(rule, new At(stage, names.next(part(rule)), use)));
        }
        var whole = new At(stage, "", use);
        return new Timing(
                begins,
                timing.until().isPresent() || isOneDay(timing.lasts()) ? timing.lasts() : length(timing.lasts(), whole),
                timing.until(),
                timing.onOpenDays(),
                timing.season(),
                timing.signal(),
                timing.optional(),
                timing.repeats().map(repeat -> repeat(repeat, whole)),
                apart(stage, timing.apart(), use));
    }

    private static After rule(After rule, At at) {
        return new After(
                rule.stage(),
                rule.edge(),
                at.gap(Kind.BEGINS_EARLIEST, rule.earliest()),
                at.gap(Kind.BEGINS_USUAL, rule.usual()),
                at.gap(Kind.BEGINS_LATEST, rule.latest()));
    }

    private static boolean isOneDay(Length length) {
        return length.usual().isZero() && length.most().filter(Period::isZero).isPresent();
    }

    /** A length that is about so long has no shortest and no longest one. */
    private static Length length(Length length, At at) {
        var bounded = !length.least().isZero() || length.most().isPresent();
        return new Length(
                bounded ? at.gap(Kind.LASTS_LEAST, length.least()) : length.least(),
                at.gap(Kind.LASTS_USUAL, length.usual()),
                at.gap(Kind.LASTS_MOST, length.most()));
    }

    private static Repeat repeat(Repeat repeat, At at) {
        return new Repeat(
                at.gap(Kind.REPEATS_EVERY, repeat.every()),
                repeat.times().map(times -> at.times(Kind.REPEATS_TIMES, times)),
                repeat.until());
    }

    private static List<Apart> apart(String stage, List<Apart> all, Use use) {
        return all.stream()
                .map(apart -> new Apart(
                        apart.from(),
                        days(new At(stage, apart.from(), use).gap(Kind.APART_DAYS, Period.ofDays(apart.days())))))
                .toList();
    }

    /** Stages are kept apart by days; months are none of them, and none is refused. */
    private static int days(Period gap) {
        return gap.getYears() == 0 && gap.getMonths() == 0 ? gap.getDays() : 0;
    }

    private static Duties duties(Stage stage, Use use) {
        var duties = stage.duties();
        var ofFamily = new Names();
        var family = duties.family().stream()
                .map(task -> {
                    var at = new At(stage.id(), ofFamily.next(shortly(task.name())), use);
                    return new FamilyTask(task.name(), task.does(), at.gap(Kind.FAMILY_TASK_DUE, task.due()));
                })
                .toList();
        var ofStaff = new Names();
        var staff = duties.staff().stream()
                .map(task -> {
                    var at = new At(stage.id(), ofStaff.next(shortly(task.name())), use);
                    return new StaffTask(task.does(), task.who(), at.gap(Kind.STAFF_TASK_DUE, task.due()));
                })
                .toList();
        return new Duties(family, staff, duties.entry(), duties.exit());
    }

    private static Precaution precaution(Precaution rule, At at) {
        return new Precaution(
                rule.tag(),
                rule.forbids(),
                at.gap(Kind.PRECAUTION_FROM, rule.from()),
                at.gap(Kind.PRECAUTION_UNTIL, rule.until()),
                rule.says(),
                rule.source());
    }

    private static VisitNeed visit(VisitNeed visit, At at) {
        var again = visit.every().isPresent() && visit.until().isEmpty();
        return new VisitNeed(
                visit.id(),
                visit.kind(),
                at.gap(Kind.VISIT_AFTER, visit.after()),
                at.gap(Kind.VISIT_WITHIN, visit.within()),
                at.gap(Kind.VISIT_EVERY, visit.every()),
                again ? at.times(Kind.VISIT_TIMES, visit.times()) : visit.times(),
                visit.until(),
                visit.source());
    }
}
