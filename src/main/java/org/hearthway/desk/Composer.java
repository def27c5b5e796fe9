package org.hearthway.desk;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.ChildId;
import org.hearthway.desk.Board.Case;
import org.hearthway.desk.Board.Row;
import org.hearthway.desk.Board.Wanted;
import org.hearthway.reminder.Outbox.Message;
import org.hearthway.reminder.Outbox.State;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitId;

/**
 * Composes the desk's list: which row stands in which group, and in which order. A visit stands at most once among
 * Waiting and Not reached, so that it is worked once.
 *
 * @param now the moment it is composed for
 * @param soonDays how many days before a visit somebody must have been asked
 * @param outDays how many days ahead a planned message is shown; held and retrying ones are always
 */
record Composer(Instant now, int soonDays, int outDays) {

    /**
     * A wish for a visit and the booked visit that misses its window, if there is one.
     *
     * @param beingChecked whether its days are not known before a second person has checked them
     */
    record Gap(ChildId child, Wanted wanted, Optional<Visit> misplaced, boolean beingChecked) {

        /** A wish whose days are known. */
        Gap(ChildId child, Wanted wanted, Optional<Visit> misplaced) {
            this(child, wanted, misplaced, false);
        }
    }

    Board compose(List<Message> messages, List<Visit> visits, List<Gap> gaps) {
        return compose(messages, visits, gaps, Set.of(), Set.of());
    }

    /**
     * The same, with the visits of which caregivers said different things, and those on a day that the clinic has closed
     * since.
     */
    Board compose(
            List<Message> messages, List<Visit> visits, List<Gap> gaps, Set<VisitId> disputed, Set<VisitId> closed) {
        var byId = visits.stream().collect(Collectors.toMap(Visit::id, Function.identity(), (one, same) -> one));
        var byVisit = messages.stream()
                .filter(message -> message.visit().isPresent())
                .collect(Collectors.groupingBy(message -> message.visit().orElseThrow()));
        var rows = new ArrayList<Row>();
        messages.stream()
                .filter(message -> !isTakenUp(message, messages))
                // a call to one of two who disagree would settle nothing: the visit itself stands here
                .filter(message -> message.state() != State.TO_CALL
                        || message.visit().filter(disputed::contains).isEmpty())
                // nobody is called about a time that cannot be
                .filter(message -> (message.state() != State.TO_CALL && message.state() != State.NOT_REACHED)
                        || message.visit().filter(closed::contains).isEmpty())
                .forEach(message -> ofMessage(message, byId).ifPresent(rows::add));
        visits.forEach(visit -> {
            var about = byVisit.getOrDefault(visit.id(), List.<Message>of());
            var row = closed.contains(visit.id()) && isToCome(visit)
                    ? Optional.of(row(visit, Case.CLOSED_DAY, last(about)))
                    : ofVisit(visit, about, disputed.contains(visit.id()));
            row.ifPresent(rows::add);
        });
        gaps.forEach(gap -> rows.add(ofGap(gap)));
        rows.sort(Comparator.comparing(Row::group).thenComparing(this::when).thenComparing(Row::id));
        return new Board(rows);
    }

    /** A message is a row of its own while it is to leave, and when a person must take over. */
    private Optional<Row> ofMessage(Message message, Map<VisitId, Visit> visits) {
        var says = switch (message.state()) {
            case PLANNED -> Case.PLANNED;
            case HELD -> Case.HELD;
            case SENDING -> Case.SENDING;
            case RETRYING -> Case.RETRYING;
            case TO_CALL -> Case.TO_CALL;
            case NOT_REACHED -> Case.FAILED;
            case SENT, MAY_HAVE_GONE_TWICE, WRITTEN_TO_FOLDER, CALLED, CANCELLED -> null;
        };
        var visit = message.visit().map(visits::get);
        if (says == null
                || isFarOff(says, message)
                || (says == Case.FAILED && visit.filter(this::isBeyondWriting).isPresent())) {
            return Optional.empty();
        }
        return Optional.of(new Row(
                "message/" + message.id(), says, message.child(), Optional.of(message), visit, Optional.empty()));
    }

    /** What failed is worked once: the call that follows it, or the latest that failed, stands for it. */
    private static boolean isTakenUp(Message failed, List<Message> messages) {
        return failed.state() == State.NOT_REACHED
                && failed.visit().isPresent()
                && messages.stream()
                        .filter(other -> other.visit().equals(failed.visit())
                                && other.person().equals(failed.person())
                                && !other.id().equals(failed.id()))
                        .anyMatch(other -> other.state() == State.TO_CALL
                                || (other.state() == State.NOT_REACHED
                                        && other.due().isAfter(failed.due())));
    }

    private boolean isFarOff(Case says, Message message) {
        return says == Case.PLANNED && message.due().isAfter(now.plus(outDays, ChronoUnit.DAYS));
    }

    /** A mail that was not delivered matters no more; a call does until the outbox takes it back. */
    private boolean isBeyondWriting(Visit visit) {
        return visit.answer() != Visit.Answer.NONE || !visit.startsAt().isAfter(now);
    }

    private boolean isToCome(Visit visit) {
        return visit.state() == Visit.State.BOOKED && visit.startsAt().isAfter(now);
    }

    private Optional<Row> ofVisit(Visit visit, List<Message> messages, boolean disputed) {
        if (visit.state() != Visit.State.BOOKED) {
            return Optional.empty();
        }
        if (!visit.endsAt().isAfter(now)) {
            return Optional.of(row(visit, Case.OVER, last(messages)));
        }
        if (disputed) {
            return Optional.of(row(visit, Case.DISAGREED, last(messages)));
        }
        if (visit.answer() == Visit.Answer.CONFIRMED || is(messages, State.TO_CALL)) {
            return Optional.empty();
        }
        if (visit.answer() == Visit.Answer.ASKED_TO_MOVE) {
            return Optional.of(row(visit, Case.ASKED_TO_MOVE, last(messages)));
        }
        if (is(messages, State.NOT_REACHED)) {
            return Optional.empty();
        }
        var went = last(messages.stream().filter(Composer::went).toList());
        if (went.isPresent()) {
            return Optional.of(row(visit, asked(went.get()), went));
        }
        var near = visit.startsAt().isBefore(now.plus(soonDays, ChronoUnit.DAYS));
        return messages.isEmpty() && near
                ? Optional.of(row(visit, Case.NOBODY_ASKED, Optional.empty()))
                : Optional.empty();
    }

    private static boolean is(List<Message> messages, State state) {
        return messages.stream().anyMatch(message -> message.state() == state);
    }

    private static boolean went(Message message) {
        return switch (message.state()) {
            case SENT, MAY_HAVE_GONE_TWICE, WRITTEN_TO_FOLDER, CALLED -> true;
            case PLANNED, HELD, SENDING, RETRYING, NOT_REACHED, TO_CALL, CANCELLED -> false;
        };
    }

    private static Case asked(Message message) {
        return switch (message.state()) {
            case MAY_HAVE_GONE_TWICE -> Case.MAY_HAVE_GONE_TWICE;
            case WRITTEN_TO_FOLDER -> Case.WRITTEN_TO_FOLDER;
            case CALLED -> Case.CALLED;
            case SENT, PLANNED, HELD, SENDING, RETRYING, NOT_REACHED, TO_CALL, CANCELLED -> Case.ASKED;
        };
    }

    private static Optional<Message> last(List<Message> messages) {
        return messages.stream().max(Comparator.comparing(Message::due).thenComparing(Message::id));
    }

    private static Row row(Visit visit, Case says, Optional<Message> message) {
        return new Row("visit/" + visit.id(), says, visit.child(), message, Optional.of(visit), Optional.empty());
    }

    private static Row ofGap(Gap gap) {
        var says = gap.misplaced().isPresent() ? Case.OUTSIDE_WINDOW : Case.NOT_BOOKED;
        if (gap.beingChecked()) {
            says = Case.REFILL_CHECKED;
        }
        return new Row(
                "book/" + gap.child() + "/" + gap.wanted().purpose(),
                says,
                gap.child(),
                Optional.empty(),
                gap.misplaced(),
                Optional.of(gap.wanted()));
    }

    /** What a group is worked by: when a message leaves, when the visit is, the last day to book. */
    private Instant when(Row row) {
        return switch (row.group()) {
            case GOING_OUT -> row.message().map(Message::due).orElse(now);
            case WAITING, NOT_REACHED ->
                Stream.concat(
                                row.visit().stream().map(Visit::startsAt),
                                row.message().stream().map(Message::due))
                        .findFirst()
                        .orElse(now);
            case TO_BOOK ->
                row.wanted()
                        .map(Wanted::until)
                        .orElse(LocalDate.MAX)
                        .atStartOfDay(java.time.ZoneOffset.UTC)
                        .toInstant();
        };
    }
}
