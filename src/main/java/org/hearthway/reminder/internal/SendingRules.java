package org.hearthway.reminder.internal;

import java.time.Duration;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.reminder.engine.BackOff;
import org.hearthway.reminder.engine.ReminderPlan;
import org.hearthway.reminder.engine.SendingHours;
import org.springframework.stereotype.Component;

/** Quiet hours and waits, from {@code content/messages/sending.yaml}. */
@Component
class SendingRules implements ContentKind {

    private ReminderPlan plan = new ReminderPlan(
            new SendingHours(LocalTime.of(8, 0), LocalTime.of(21, 0)), Duration.ofHours(2), Duration.ofDays(2));
    private BackOff backOff = new BackOff(Duration.ofMinutes(1), Duration.ofHours(1));

    @Override
    public String place() {
        return "messages/sending.yaml";
    }

    @Override
    public void read(Entry file) {
        var earliest = time(file, "earliest").orElse(plan.hours().from());
        var before = time(file, "before").orElse(plan.hours().until());
        var lead = Duration.ofHours(file.integer("hours-before-visit", 0, 48));
        var useful = Duration.ofDays(file.integer("useful-days", 1, 30));
        var first = Duration.ofSeconds(file.integer("first-wait-seconds", 1, 3_600));
        var longest = Duration.ofSeconds(file.integer("longest-wait-seconds", 1, 86_400));
        if (!before.isAfter(earliest)) {
            file.wrong("before", "\"before\" is not later than \"earliest\"", "a later time of the same day");
            return;
        }
        plan = new ReminderPlan(new SendingHours(earliest, before), lead, useful);
        backOff = new BackOff(first, longest);
    }

    /** A wall time of a content file; empty, and told, when it is none. */
    static Optional<LocalTime> time(Entry file, String key) {
        var text = file.text(key);
        try {
            return Optional.of(LocalTime.parse(text));
        } catch (DateTimeParseException notATime) {
            file.wrong(key, "\"" + key + "\" is " + text, "a time such as \"08:00\"");
            return Optional.empty();
        }
    }

    ReminderPlan plan() {
        return plan;
    }

    BackOff backOff() {
        return backOff;
    }
}
