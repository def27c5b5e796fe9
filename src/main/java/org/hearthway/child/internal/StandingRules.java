package org.hearthway.child.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.child.Standing;
import org.hearthway.child.Standings.Saying;

/** What may be said of a child's status. */
final class StandingRules {

    private static final int REASON = 500;
    private static final int SERVICE = 200;
    private static final int DEVICE_DATE_MONTHS = 12;

    private StandingRules() {}

    static void check(Saying saying, Standing now, boolean deviceInPlace, LocalDate today) {
        var problems = new ArrayList<Problem>();
        if (saying.status() == now.status()) {
            problems.add(Problem.at("status", "child.problem.same-status"));
        }
        reason(saying.reason(), problems);
        if (saying.status().needsReceivingService()) {
            handover(saying, deviceInPlace, today, problems);
        }
        Invalid.ifAny(problems);
    }

    static void checkReason(String reason) {
        var problems = new ArrayList<Problem>();
        reason(reason, problems);
        Invalid.ifAny(problems);
    }

    private static void reason(String reason, List<Problem> problems) {
        if (reason.isBlank() || reason.strip().length() > REASON) {
            problems.add(Problem.at("reason", "child.problem.status-reason", REASON));
        }
    }

    private static void handover(Saying saying, boolean deviceInPlace, LocalDate today, List<Problem> problems) {
        var service = saying.handover().map(Standing.Handover::service).orElse("");
        if (service.isBlank() || service.strip().length() > SERVICE) {
            problems.add(Problem.at("service", "child.problem.service", SERVICE));
        }
        var day = saying.handover().flatMap(Standing.Handover::deviceDate);
        if (deviceInPlace && day.isEmpty()) {
            problems.add(Problem.at("deviceDate", "child.problem.device-date-missing"));
        }
        if (day.filter(d -> d.isBefore(today) || d.isAfter(today.plusMonths(DEVICE_DATE_MONTHS)))
                .isPresent()) {
            problems.add(Problem.at("deviceDate", "child.problem.device-date", DEVICE_DATE_MONTHS));
        }
    }
}
