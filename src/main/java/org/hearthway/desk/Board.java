package org.hearthway.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.reminder.Outbox;
import org.hearthway.visit.Visit;

/** What the desk shows: one list in four groups. */
public record Board(List<Row> rows) {

    public Board {
        rows = List.copyOf(rows);
    }

    /** The rows of a group, in the order in which they are worked. */
    public List<Row> in(Group group) {
        return rows.stream().filter(row -> row.group() == group).toList();
    }

    /** The row with this identifier. */
    public Optional<Row> row(String id) {
        return rows.stream().filter(row -> row.id().equals(id)).findFirst();
    }

    /** Where a row stands. */
    public enum Group {
        /** A message that leaves by itself unless somebody holds it. */
        GOING_OUT,
        /** The family was asked and has not answered, or asked to move; or nobody noted whether the child came. */
        WAITING,
        /** A person must try. */
        NOT_REACHED,
        /** No date yet, or one that does not keep its window. */
        TO_BOOK
    }

    /** What exactly is the case. */
    public enum Case {
        PLANNED(Group.GOING_OUT),
        HELD(Group.GOING_OUT),
        SENDING(Group.GOING_OUT),
        RETRYING(Group.GOING_OUT),
        /** A message went; no answer yet. */
        ASKED(Group.WAITING),
        MAY_HAVE_GONE_TWICE(Group.WAITING),
        WRITTEN_TO_FOLDER(Group.WAITING),
        /** Somebody was reached by telephone; the answer is not noted yet. */
        CALLED(Group.WAITING),
        ASKED_TO_MOVE(Group.WAITING),
        /** Caregivers said different things of one visit; the office settles it. */
        DISAGREED(Group.WAITING),
        /** Booked, and the clinic has closed that day since. */
        CLOSED_DAY(Group.WAITING),
        /** The visit is over; nobody noted whether the child came. */
        OVER(Group.WAITING),
        TO_CALL(Group.NOT_REACHED),
        /** Messages were tried until they were of no more use. */
        FAILED(Group.NOT_REACHED),
        /** A visit is near and no message was ever planned for it: there is nobody to write to. */
        NOBODY_ASKED(Group.NOT_REACHED),
        NOT_BOOKED(Group.TO_BOOK),
        /** The pump was refilled; the next date waits for its second check. */
        REFILL_CHECKED(Group.TO_BOOK),
        /** Booked, but not within the window. */
        OUTSIDE_WINDOW(Group.TO_BOOK);

        private final Group group;

        Case(Group group) {
            this.group = group;
        }

        /** The group it stands in. */
        public Group group() {
            return group;
        }
    }

    /**
     * A visit that the plan or the pump asks for.
     *
     * @param purpose what the visit will answer
     * @param kind identifier of the kind of visit
     * @param from first day it may lie on
     * @param until last day it may lie on
     * @param alarm the day on which the pump sounds, of a refill
     */
    public record Wanted(String purpose, String kind, LocalDate from, LocalDate until, Optional<LocalDate> alarm) {

        /** A visit for anything but a refill. */
        public Wanted(String purpose, String kind, LocalDate from, LocalDate until) {
            this(purpose, kind, from, until, Optional.empty());
        }

        /** Whether its days follow from a rhythm of checks, which the team has to confirm. */
        public boolean isToBeConfirmed() {
            return purpose.startsWith(Gaps.CHECK);
        }
    }

    /**
     * A row.
     *
     * @param id stays the same while the row is about the same thing, so that an address can name it
     * @param says what is the case
     * @param child whose
     * @param message the message it is about, or the last that went
     * @param visit the visit it is about
     * @param wanted what is to be booked
     */
    public record Row(
            String id,
            Case says,
            ChildId child,
            Optional<Outbox.Message> message,
            Optional<Visit> visit,
            Optional<Wanted> wanted) {

        /** The group it stands in. */
        public Group group() {
            return says.group();
        }

        /** Whether its message can be sent or held. */
        public boolean isSendable() {
            var mail =
                    message.filter(one -> one.channel() == Outbox.Channel.MAIL).isPresent();
            return mail && (says == Case.PLANNED || says == Case.HELD || says == Case.RETRYING);
        }
    }
}
