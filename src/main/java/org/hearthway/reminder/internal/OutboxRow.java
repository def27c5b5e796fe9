package org.hearthway.reminder.internal;

import java.util.Optional;
import java.util.UUID;
import org.hearthway.reminder.Outbox.State;

/**
 * A kept message or call.
 *
 * @param id identifier
 * @param draft what was planned
 * @param link the way in for the person, when the message has one
 * @param state where it stands
 * @param tries how often it was tried
 * @param reason why the last try failed, a word of the bundle; empty when none failed
 * @param note what was noted of a call
 * @param byHand whether a person said to send it now, whatever the hour
 * @param doubtful whether an earlier try may have reached the server
 * @param unwanted whether its cause fell away while it was being sent
 * @param toTeam whether it is for a person of the clinic, and so goes at any hour
 * @param version counts the changes
 */
record OutboxRow(
        UUID id,
        Draft draft,
        Optional<UUID> link,
        State state,
        int tries,
        String reason,
        String note,
        boolean byHand,
        boolean doubtful,
        boolean unwanted,
        boolean toTeam,
        long version) {}
