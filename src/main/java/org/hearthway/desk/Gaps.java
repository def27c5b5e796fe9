package org.hearthway.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.base.ChildId;
import org.hearthway.desk.Board.Wanted;
import org.hearthway.desk.Composer.Gap;
import org.hearthway.path.engine.Plan;
import org.hearthway.pump.Refill;
import org.hearthway.visit.Unbooked;
import org.hearthway.visit.Visit;

/**
 * Finds the visits that a child's plan or pump asks for and that are not booked in time.
 *
 * @param today the clinic's day
 * @param aheadDays how far ahead a window may open to be shown
 * @param refillKind the kind of visit at which a pump is refilled
 */
record Gaps(LocalDate today, int aheadDays, String refillKind) {

    /**
     * A visit that something is due for: a check of hips or spine, a cast, equipment that does not fit.
     *
     * @param by the day by which it should be done
     * @param windowDays days before and after it in which a visit keeps it
     * @param keptFrom the first day on which a visit keeps it, booked or past; empty where only a record of what was
     *     done does, and where the plan's own wish for such a visit answers for it, too
     */
    record Check(String purpose, String kind, LocalDate by, int windowDays, Optional<LocalDate> keptFrom) {

        /** One that a record alone takes off. */
        Check(String purpose, String kind, LocalDate by, int windowDays) {
            this(purpose, kind, by, windowDays, Optional.empty());
        }
    }

    /** What the purpose of a visit for a check of hips or spine begins with. */
    static final String CHECK = "check/";

    /** The purpose of a refill visit. */
    static final String REFILL = "refill";

    Stream<Gap> of(ChildId child, List<Plan> plans, Optional<Refill> refill, List<Check> checks, List<Visit> visits) {
        var asked = of(child, plans, refill, visits).toList();
        var due = checks.stream()
                .filter(check -> check.keptFrom().isPresent()
                        || asked.stream().noneMatch(gap -> gap.wanted().kind().equals(check.kind())))
                .flatMap(check -> check(child, check, visits));
        return Stream.concat(asked.stream(), due)
                .filter(gap -> !gap.wanted().from().isAfter(today.plusDays(aheadDays)));
    }

    /** A late check is kept by a visit within the same time from today on. */
    private Stream<Gap> check(ChildId child, Check check, List<Visit> visits) {
        var last = (check.by().isBefore(today) ? today : check.by()).plusDays(check.windowDays());
        var booked = visits.stream()
                .filter(visit -> visit.state() == Visit.State.BOOKED
                        && visit.kind().id().equals(check.kind())
                        && !visit.start().toLocalDate().isBefore(today)
                        && check.keptFrom()
                                .filter(visit.start().toLocalDate()::isBefore)
                                .isEmpty())
                .toList();
        if (booked.stream().anyMatch(visit -> !visit.start().toLocalDate().isAfter(last))
                || check.keptFrom()
                        .filter(from -> tookPlace(check.kind(), from, visits))
                        .isPresent()) {
            return Stream.empty();
        }
        var wanted = new Wanted(check.purpose(), check.kind(), check.by().minusDays(check.windowDays()), check.by());
        return Stream.of(new Gap(child, wanted, booked.stream().findFirst()));
    }

    private static boolean tookPlace(String kind, LocalDate from, List<Visit> visits) {
        return visits.stream()
                .anyMatch(visit -> visit.state() == Visit.State.ATTENDED
                        && visit.kind().id().equals(kind)
                        && !visit.start().toLocalDate().isBefore(from));
    }

    Stream<Gap> of(ChildId child, List<Plan> plans, Optional<Refill> due, List<Visit> visits) {
        var asked = plans.stream()
                .flatMap(p -> Unbooked.of(p, visits, today))
                .filter(unbooked -> unbooked.stage().state() != Plan.State.PAST
                        || !unbooked.window().until().isBefore(today))
                .map(unbooked -> new Gap(child, wanted(unbooked.window()), unbooked.misplaced()));
        var refill = due.stream().flatMap(one -> refill(child, one, visits));
        return Stream.concat(asked, refill).filter(gap -> !gap.wanted().from().isAfter(today.plusDays(aheadDays)));
    }

    private static Wanted wanted(Plan.VisitWindow window) {
        return new Wanted(window.purpose(), window.kind(), window.from(), window.until());
    }

    private Stream<Gap> refill(ChildId child, Refill refill, List<Visit> visits) {
        if (refill.beingChecked()) {
            // its day stands for a window that nobody knows yet
            var filled = new Wanted(REFILL, refillKind, refill.filled(), refill.filled());
            return Stream.of(new Gap(child, filled, Optional.empty(), true));
        }
        return refill.window().stream()
                .map(window -> new Wanted(REFILL, refillKind, window.opens(), window.day(), window.alarm()))
                .flatMap(wanted -> refill(child, wanted, after(refill.filled(), visits)));
    }

    /** The visit at which it was filled last does not answer for the next time. */
    private static List<Visit> after(LocalDate filled, List<Visit> visits) {
        return visits.stream()
                .filter(visit -> visit.start().toLocalDate().isAfter(filled))
                .toList();
    }

    private Stream<Gap> refill(ChildId child, Wanted wanted, List<Visit> visits) {
        var found = visits.stream().filter(this::isRefillToCome).toList();
        return found.stream().anyMatch(visit -> !visit.start().toLocalDate().isAfter(wanted.until()))
                ? Stream.empty()
                : Stream.of(new Gap(child, wanted, found.stream().findFirst()));
    }

    private boolean isRefillToCome(Visit visit) {
        return visit.state() == Visit.State.BOOKED
                && visit.kind().id().equals(refillKind)
                && !visit.start().toLocalDate().isBefore(today);
    }
}
