package org.hearthway.caseload.engine;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One reason for a look at a child.
 *
 * @param rule which rule found it
 * @param key tells it from the child's other causes; at most one open item has it
 * @param dueDay the day by which somebody should have looked
 * @param dueAt the moment, where hours count
 * @param day the day it is about: of the report, of the painful exercise, of the visit missed last, the refill-by date, the first day without log, of what waits for its second check
 * @param count pain 0 to 10, days without a log, visits missed, the first number of what the home program's record says, or 0
 * @param subject identifier of the report, of the exercise, of the kind of visit of what waits for its second check or of the decision about a device; the further numbers of what the home program's record says, or empty
 * @param urgency of a report
 */
public record Cause(
        Rule rule,
        String key,
        LocalDate dueDay,
        Optional<Instant> dueAt,
        LocalDate day,
        int count,
        String subject,
        Optional<Urgency> urgency) {}
