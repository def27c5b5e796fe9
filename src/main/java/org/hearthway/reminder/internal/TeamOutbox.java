package org.hearthway.reminder.internal;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.reminder.Outbox.Channel;
import org.hearthway.reminder.StaffMail;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Mail to the team, in the same outbox as the family's. */
@Service
@Transactional(propagation = Propagation.MANDATORY)
class TeamOutbox implements StaffMail {

    private final OutboxRows rows;
    private final Wording wording;
    private final Accounts accounts;
    private final ClinicSettings clinic;
    private final Gate gate;
    private final Clock clock;

    TeamOutbox(OutboxRows rows, Wording wording, Accounts accounts, ClinicSettings clinic, Gate gate, Clock clock) {
        this.rows = rows;
        this.wording = wording;
        this.accounts = accounts;
        this.clinic = clinic;
        this.gate = gate;
        this.clock = clock;
    }

    @Override
    public void send(Viewer viewer, ChildId child, Note note) {
        gate.require(viewer, Action.WORK_NEEDS, child);
        var known = rows.ofCause(note.cause()).stream()
                .anyMatch(row -> row.draft().idem().equals(note.key()));
        Optional.ofNullable(accounts.byId(Family.MACHINE, List.of(note.to())).get(note.to()))
                .filter(account -> !known)
                .ifPresent(account -> rows.insertToTeam(draft(child, note, account), clock.instant()));
    }

    private Draft draft(ChildId child, Note note, Account to) {
        var wall = LocalDateTime.ofInstant(note.since(), clinic.zone());
        return new Draft(
                note.key(),
                note.cause(),
                child,
                to.id(),
                Optional.empty(),
                Channel.MAIL,
                to.language(),
                to.zone(),
                "",
                note.text(),
                wall,
                clinic.zone(),
                true,
                wording.subject(note.text(), to.language(), wall, clinic.zone(), to.zone()),
                wording.body(note.text(), to.language(), wall, clinic.zone(), to.zone()),
                clock.instant(),
                Optional.empty());
    }

    @Override
    public void noLonger(Viewer viewer, ChildId child, String cause) {
        gate.require(viewer, Action.WORK_NEEDS, child);
        rows.ofCause(cause).forEach(row -> rows.retire(row.id()));
    }
}
