package org.hearthway.caseload.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What must be done so that a child's open items say what the facts say. Done once, the next one is empty.
 *
 * @param open causes that get an item
 * @param refreshed open causes that stand with other particulars, such as one more silent day
 * @param ended open causes that stand no longer, each with the reason
 */
public record Reconciliation(List<Cause> open, List<Cause> refreshed, Map<String, Gone> ended) {

    public Reconciliation {
        open = List.copyOf(open);
        refreshed = List.copyOf(refreshed);
        ended = Map.copyOf(ended);
    }

    /** Whether there is nothing to do. */
    public boolean isEmpty() {
        return open.isEmpty() && refreshed.isEmpty() && ended.isEmpty();
    }

    /**
     * Compares.
     *
     * @param items causes of the open items, no key twice
     * @param settled keys of items that a person closed with an outcome: those do not come back
     * @param causes what stands now, no key twice
     * @param facts the facts that the causes were found in
     */
    public static Reconciliation of(List<Cause> items, Set<String> settled, List<Cause> causes, Facts facts) {
        var have = items.stream().collect(Collectors.toMap(Cause::key, Function.identity()));
        var open = new ArrayList<Cause>();
        var refreshed = new ArrayList<Cause>();
        for (var cause : causes) {
            var item = have.remove(cause.key());
            if (item == null) {
                if (!settled.contains(cause.key())) {
                    open.add(cause);
                }
            } else if (!cause.rule().isHappening() && !item.equals(cause)) {
                refreshed.add(cause);
            }
        }
        var ended = have.values().stream()
                .filter(item -> !item.rule().isHappening())
                .collect(Collectors.toMap(Cause::key, item -> why(item, facts)));
        return new Reconciliation(open, refreshed, ended);
    }

    private static Gone why(Cause ended, Facts facts) {
        return switch (ended.rule()) {
            case PAIN_RISING, PAIN_OFTEN, STOPPED, TOO_HARD, FEW_DONE -> Gone.RECORD_CHANGED;
            case MORE -> Gone.MORE_SPENT;
            case CARE_TURN -> Gone.PROGRAM_SAVED;
            case NO_LOG -> loggedSince(facts, ended.day()) ? Gone.LOGGED_AGAIN : Gone.PLAN_CHANGED;
            case REFILL ->
                facts.refill().map(refill -> whyRefill(refill, ended.day())).orElseGet(() -> whyNoDay(facts));
            case FIRST_FILL -> facts.refill().isPresent() ? Gone.FILL_RECORDED : whyNoDay(facts);
            case PUMP_CONCERN -> Gone.PUMP_LOOKED_INTO;
            case DEVICE_BEHIND -> Gone.DEVICE_AGREES;
            case TASK -> Gone.TASK_WORKED;
            case SECOND_CHECK -> Gone.TYPED_AGAIN;
            case CHECK -> whyCheck(facts, ended);
            case DEVICE_WARNING -> Gone.READ_ANEW;
            case GENERATOR -> whyGenerator(facts, ended);
            case STAGE_WAITS, STAGE_NO_DAY, STAGE_LATE -> Gone.PATH_CHANGED;
            case STAGE_VISIT -> isKept(facts, ended.subject()) ? Gone.VISIT_BOOKED : Gone.PATH_CHANGED;
            case SIGN, PAIN, MISSED -> throw new IllegalArgumentException("what happened does not end by itself");
        };
    }

    /** No day to refill by is known: a fill waits for its second check, or the pump is out. */
    private static Gone whyNoDay(Facts facts) {
        return facts.unconfirmed().stream().anyMatch(waits -> waits.what() == Facts.Unconfirmed.What.PUMP)
                ? Gone.FILL_RECORDED
                : Gone.DEVICE_CHANGED;
    }

    private static Gone whyRefill(Facts.Refill refill, LocalDate was) {
        if (!refill.by().equals(was)) {
            return Gone.REFILL_DATE_MOVED;
        }
        return refill.booked() ? Gone.VISIT_BOOKED : Gone.NOT_NEAR;
    }

    private static Gone whyCheck(Facts facts, Cause ended) {
        return facts.checks().stream()
                .filter(check ->
                        check.watched().equals(ended.subject()) && check.by().equals(ended.day()))
                .findFirst()
                .map(check -> check.booked() ? Gone.VISIT_BOOKED : Gone.NOT_NEAR)
                .orElse(Gone.CHECK_DATE_MOVED);
    }

    private static Gone whyGenerator(Facts facts, Cause ended) {
        return facts.stimulator().due().stream()
                .filter(due -> due.key().equals(ended.subject()) && due.by().equals(ended.day()))
                .findFirst()
                .map(due -> due.booked() ? Gone.VISIT_BOOKED : Gone.NOT_NEAR)
                .orElse(Gone.READING_RECORDED);
    }

    private static boolean isKept(Facts facts, String purpose) {
        return facts.paths().stream().anyMatch(path -> path.kept().contains(purpose));
    }

    private static boolean loggedSince(Facts facts, LocalDate day) {
        return facts.homeDays().stream()
                .anyMatch(home -> home.logged() && !home.date().isBefore(day));
    }
}
