package org.hearthway.reminder.internal;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.reminder.engine.Rule;
import org.hearthway.reminder.engine.Standing;
import org.hearthway.reminder.engine.Step;
import org.hearthway.reminder.engine.Way;
import org.springframework.stereotype.Component;

/** The reminder rules, one file each in {@code content/messages/rules}. */
@Component
class RuleBook implements ContentKind {

    private enum About {
        VISIT,
        REFILL,
        TASK,
        /** A look at home at what a child wears or uses. */
        HOME_CHECK,
        /** A check of hips or spine. */
        CHECK,
        /** A step of a taper calendar. */
        STEP
    }

    /**
     * A rule for days that are not visits.
     *
     * @param rule its steps
     * @param at the hour of its mails
     */
    record DayRule(Rule rule, LocalTime at) {}

    /**
     * The rule for refills.
     *
     * @param rule its steps
     * @param visitKind the kind of visit that meets the deadline
     * @param at the hour of its mails
     */
    record RefillRule(Rule rule, String visitKind, LocalTime at) {}

    /**
     * The rule for what families are asked to do.
     *
     * @param rule its steps
     * @param at the hour of its mails
     */
    record TaskRule(Rule rule, LocalTime at) {}

    private record Named(String text, Entry block, String key) {}

    private final Map<Boolean, Rule> visitRules = new java.util.HashMap<>();
    private final List<RefillRule> refillRules = new ArrayList<>();
    private final List<TaskRule> taskRules = new ArrayList<>();
    private final Map<About, DayRule> dayRules = new EnumMap<>(About.class);
    private final List<Named> named = new ArrayList<>();
    private final MessageTexts texts;

    RuleBook(MessageTexts texts) {
        this.texts = texts;
    }

    @Override
    public String place() {
        return "messages/rules";
    }

    @Override
    public void read(Entry file) {
        var about = file.choice("about", About.class);
        var steps = file.list("steps").stream().map(this::step).toList();
        var names = new HashSet<String>();
        if (steps.isEmpty() || !steps.stream().map(Step::name).allMatch(names::add)) {
            file.wrong("steps", "\"steps\" is empty or names a day twice", "each day once for send and once for call");
        }
        // a day has no hour for which a mail could come too late
        var tooLate = about == About.TASK || about == About.STEP ? "" : text(file, "too-late");
        var rule = new Rule(file.id(), steps, tooLate);
        switch (about) {
            case VISIT -> {
                if (visitRules.put(file.yes("critical"), rule) != null) {
                    file.wrong("critical", "another rule is for these visits already", "one rule for each");
                }
            }
            case REFILL -> {
                var at = SendingRules.time(file, "at").orElse(LocalTime.NOON);
                refillRules.add(new RefillRule(rule, file.text("answered-by"), at));
            }
            case TASK ->
                taskRules.add(new TaskRule(rule, SendingRules.time(file, "at").orElse(LocalTime.NOON)));
            case HOME_CHECK, CHECK, STEP -> {
                var at = SendingRules.time(file, "at").orElse(LocalTime.NOON);
                if (dayRules.put(about, new DayRule(rule, at)) != null) {
                    file.wrong("about", "another rule is for these days already", "one rule for each");
                }
            }
        }
    }

    private Step step(Entry block) {
        var days =
                block.has("days-after") ? -block.integer("days-after", 0, 365) : block.integer("days-before", 0, 365);
        var at = block.has("at") ? SendingRules.time(block, "at") : Optional.<LocalTime>empty();
        var urgent = block.yes("urgent");
        var way = block.has("call") ? Way.CALL : Way.SEND;
        var step = new Step(days, at, way, urgent, words(block.block(way.name().toLowerCase(Locale.ROOT))));
        block.done();
        return step;
    }

    private Map<Standing, String> words(Entry block) {
        var words = new EnumMap<Standing, String>(Standing.class);
        for (var standing : Standing.values()) {
            var key = standing.name().toLowerCase(Locale.ROOT).replace('_', '-');
            if (block.has(key)) {
                words.put(standing, text(block, key));
            }
        }
        block.done();
        return words;
    }

    private String text(Entry block, String key) {
        var text = block.text(key);
        named.add(new Named(text, block, key));
        return text;
    }

    @Override
    public void check() {
        named.stream()
                .filter(name -> !texts.has(name.text()))
                .forEach(name -> name.block()
                        .wrong(
                                name.key(),
                                "\"" + name.key() + "\" is " + name.text(),
                                "the name of a file in messages/texts"));
        named.clear();
    }

    /** The rule for visits that are critical, or for those that are not; empty when the content has none. */
    Optional<Rule> forVisits(boolean critical) {
        return Optional.ofNullable(visitRules.get(critical));
    }

    /** The rules for what families are asked to do. */
    List<TaskRule> forTasks() {
        return List.copyOf(taskRules);
    }

    /** The rule for looks at home; empty when the content has none. */
    Optional<DayRule> forHomeChecks() {
        return Optional.ofNullable(dayRules.get(About.HOME_CHECK));
    }

    /** The rule for checks of hips and spine; empty when the content has none. */
    Optional<DayRule> forChecks() {
        return Optional.ofNullable(dayRules.get(About.CHECK));
    }

    /** The rule for the steps of taper calendars; empty when the content has none. */
    Optional<DayRule> forSteps() {
        return Optional.ofNullable(dayRules.get(About.STEP));
    }

    /** The rules for refills. */
    List<RefillRule> forRefills() {
        return List.copyOf(refillRules);
    }
}
