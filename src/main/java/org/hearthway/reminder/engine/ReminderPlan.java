package org.hearthway.reminder.engine;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which reminders go to one person about one occasion, and when. Days are calendar days of the person's zone, never
 * multiples of 24 hours: the hour of the day stays when the clocks change in between.
 *
 * @param hours when a family may be written to
 * @param lead no mail leaves later than this before a visit; a person calls instead
 * @param useful how long a mail that could not be sent is still worth sending
 */
public record ReminderPlan(SendingHours hours, Duration lead, Duration useful) {

    /**
     * The reminders still ahead.
     *
     * @param zone the person's zone
     * @param now mails whose time lies before this instant are left out; a call whose time has passed is due at once,
     *     because a call stands for something that must not be missed
     * @return by due time
     */
    public List<Planned> of(Rule rule, Occasion occasion, Standing standing, ZoneId zone, Instant now) {
        return rule.steps().stream()
                .filter(step -> step.words().containsKey(standing))
                .flatMap(step -> plan(rule, step, occasion, standing, zone, now).stream())
                .sorted(Comparator.comparing(Planned::due).thenComparing(Planned::step))
                .toList();
    }

    private Optional<Planned> plan(
            Rule rule, Step step, Occasion occasion, Standing standing, ZoneId zone, Instant now) {
        var wall = occasion.on(zone).minusDays(step.daysBefore());
        var meant = WallTime.instant(step.at().map(wall.toLocalDate()::atTime).orElse(wall), zone);
        var text = step.words().getOrDefault(standing, "");
        return switch (step.way()) {
            case CALL -> call(step, text, occasion, meant, now);
            case SEND -> mail(rule, step, text, occasion, zone, meant, now);
        };
    }

    private Optional<Planned> mail(
            Rule rule, Step step, String text, Occasion occasion, ZoneId zone, Instant meant, Instant now) {
        var due = hours.onOrAfter(meant, zone);
        if (due.isBefore(now)) {
            return Optional.empty();
        }
        var last = occasion.starts().map(start -> start.minus(lead)).orElse(Instant.MAX);
        if (due.isAfter(last)) {
            return call(step, rule.tooLate(), occasion, meant, now);
        }
        var until = due.plus(useful);
        return Optional.of(new Planned(
                step.name(), Way.SEND, text, step.urgent(), meant, due, until.isAfter(last) ? last : until));
    }

    private static Optional<Planned> call(Step step, String text, Occasion occasion, Instant meant, Instant now) {
        var due = meant.isBefore(now) ? now : meant;
        if (occasion.starts().filter(start -> !due.isBefore(start)).isPresent()) {
            return Optional.empty();
        }
        var until = occasion.starts().orElse(Instant.MAX);
        return Optional.of(new Planned(step.name(), Way.CALL, text, step.urgent(), meant, due, until));
    }
}
