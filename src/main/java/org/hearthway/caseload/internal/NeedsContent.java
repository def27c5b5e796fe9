package org.hearthway.caseload.internal;

import java.time.Duration;
import java.time.Period;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.hearthway.base.Role;
import org.hearthway.caseload.engine.Figure;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.caseload.engine.RuleBook;
import org.hearthway.caseload.engine.Urgency;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Reads {@code content/needs/rules.yaml}: the bounds at which a child needs a look. */
@Component
class NeedsContent implements ContentKind {

    private @Nullable RuleBook book;
    private String refillKind = "";
    private int checkLateDays;
    private int generatorLateDays;
    private Set<String> readKinds = Set.of();
    private Set<String> replaceKinds = Set.of();

    RuleBook book() {
        if (book == null) {
            throw new IllegalStateException("content/needs/rules.yaml was not read");
        }
        return book;
    }

    /** The kind of visit at which a pump is refilled. */
    String refillKind() {
        return refillKind;
    }

    /** How many days after a check is due a booked visit still counts as in good time. */
    int checkLateDays() {
        return checkLateDays;
    }

    /** How many days after a generator is due a booked visit still counts as in good time. */
    int generatorLateDays() {
        return generatorLateDays;
    }

    /** The kinds of visits at which a battery is read. */
    Set<String> readKinds() {
        return readKinds;
    }

    /** The kinds of visits at which a new generator is planned or put in. */
    Set<String> replaceKinds() {
        return replaceKinds;
    }

    @Override
    public String place() {
        return "needs";
    }

    @Override
    public void read(Entry file) {
        file.provenance();
        var conduct = new EnumMap<Rule, RuleBook.Conduct>(Rule.class);
        var figures = new EnumMap<Figure, Integer>(Figure.class);
        var openDays = new EnumMap<Rule, Integer>(Rule.class);

        var pain = file.block("pain");
        figures(pain, Rule.PAIN, figures);
        openDays.put(Rule.PAIN, pain.integer("open-days", 0, 5));
        conduct.put(Rule.PAIN, conduct(pain));

        var silence = file.block("no-log");
        figures(silence, Rule.NO_LOG, figures);
        openDays.put(Rule.NO_LOG, silence.integer("open-days", 0, 5));
        conduct.put(Rule.NO_LOG, conduct(silence));

        var home = Map.of(
                Rule.PAIN_RISING, "pain-rising",
                Rule.PAIN_OFTEN, "pain-often",
                Rule.STOPPED, "stopped-by-pain",
                Rule.TOO_HARD, "too-hard",
                Rule.FEW_DONE, "few-done",
                Rule.MORE, "more",
                Rule.CARE_TURN, "care-turn");
        home.forEach((rule, name) -> {
            var block = file.block(name);
            figures(block, rule, figures);
            openDays.put(rule, block.integer("open-days", 0, 10));
            conduct.put(rule, conduct(block));
        });

        var refill = file.block("refill");
        var refillDays = refill.integer("days-before", 1, 60);
        refillKind = refill.text("visit");
        conduct.put(Rule.REFILL, conduct(refill));

        var concern = file.block("pump-concern");
        openDays.put(Rule.PUMP_CONCERN, concern.integer("open-days", 0, 5));
        conduct.put(Rule.PUMP_CONCERN, conduct(concern));

        var firstFill = file.block("first-fill");
        openDays.put(Rule.FIRST_FILL, firstFill.integer("open-days", 0, 5));
        conduct.put(Rule.FIRST_FILL, conduct(firstFill));

        var behind = file.block("device-behind");
        openDays.put(Rule.DEVICE_BEHIND, behind.integer("open-days", 0, 5));
        conduct.put(Rule.DEVICE_BEHIND, conduct(behind));

        var check = file.block("check");
        var checkDays = check.integer("days-before", 1, 180);
        checkLateDays = check.integer("visit-late-days", 0, 90);
        conduct.put(Rule.CHECK, conduct(check));

        var generator = file.block("generator");
        var generatorDays = generator.integer("days-before", 0, 180);
        generatorLateDays = generator.integer("visit-late-days", 0, 90);
        readKinds = Set.copyOf(generator.texts("read-at"));
        replaceKinds = Set.copyOf(generator.texts("replace-at"));
        conduct.put(Rule.GENERATOR, conduct(generator));

        var warning = file.block("device-warning");
        openDays.put(Rule.DEVICE_WARNING, warning.integer("open-days", 0, 5));
        conduct.put(Rule.DEVICE_WARNING, conduct(warning));

        var second = file.block("second-check");
        openDays.put(Rule.SECOND_CHECK, second.integer("open-days", 0, 10));
        conduct.put(Rule.SECOND_CHECK, conduct(second));

        var missed = file.block("missed");
        var missedInARow = missed.integer("in-a-row", 2, 5);
        openDays.put(Rule.MISSED, missed.integer("open-days", 0, 5));
        conduct.put(Rule.MISSED, conduct(missed));

        var task = file.block("task");
        var taskDays = task.integer("team-days-past", 1, 60);
        var familyTaskDays = task.integer("family-days-past", 1, 60);
        openDays.put(Rule.TASK, task.integer("open-days", 0, 5));
        conduct.put(Rule.TASK, conduct(task));

        var path = path(file, conduct);

        var sign = file.block("sign");
        var within = new EnumMap<Urgency, Duration>(Urgency.class);
        within.put(Urgency.NOW, minutes(sign, "now-within-minutes"));
        within.put(Urgency.URGENT, minutes(sign, "urgent-within-minutes"));
        var later = Map.of(
                Urgency.HOURS, sign.integer("hours-open-days", 0, 5),
                Urgency.NOTE, sign.integer("note-open-days", 0, 5));
        conduct.put(Rule.SIGN, conduct(sign));

        book = new RuleBook(
                figures,
                refillDays,
                checkDays,
                generatorDays,
                missedInARow,
                taskDays,
                familyTaskDays,
                path,
                within,
                later,
                openDays,
                conduct);
    }

    private static void figures(Entry block, Rule rule, Map<Figure, Integer> figures) {
        Arrays.stream(Figure.values())
                .filter(figure -> figure.rule() == rule)
                .forEach(figure -> figures.put(figure, block.integer(figure.key(), figure.least(), figure.most())));
    }

    private static RuleBook.OfPath path(Entry file, Map<Rule, RuleBook.Conduct> conduct) {
        var waits = file.block("stage-waits");
        var waitsDays = waits.integer("days-before", 0, 90);
        conduct.put(Rule.STAGE_WAITS, conduct(waits));
        conduct.put(Rule.STAGE_NO_DAY, conduct(file.block("stage-no-day")));
        conduct.put(Rule.STAGE_LATE, conduct(file.block("stage-late")));
        var visit = file.block("stage-visit");
        var bounds =
                new RuleBook.OfPath(waitsDays, visit.integer("days-before", 0, 90), visit.integer("days-past", 0, 365));
        conduct.put(Rule.STAGE_VISIT, conduct(visit));
        return bounds;
    }

    private static Duration minutes(Entry sign, String key) {
        return Duration.ofMinutes(sign.integer(key, 1, 24 * 60));
    }

    private static RuleBook.Conduct conduct(Entry rule) {
        var with = rule.choice("with", Role.class);
        if (!with.isStaff()) {
            rule.wrong("with", "\"with\" is a role of families", "a role of the clinic");
        }
        var aside = rule.maybePeriod("set-aside").map(Period::getDays).orElse(0);
        var closes = rule.yes("outcome-closes");
        rule.done();
        return new RuleBook.Conduct(with, aside, closes);
    }
}
