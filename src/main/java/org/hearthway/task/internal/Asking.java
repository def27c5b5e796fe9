package org.hearthway.task.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.OnCall;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Viewer;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Caregiver;
import org.hearthway.child.Households.Reach;
import org.hearthway.task.Assignee;
import org.hearthway.task.Tasks.Choice;
import org.springframework.stereotype.Component;

/** Whom a task about a child can be given to, and in which languages its words are read. */
@Component
class Asking {

    private static final Viewer MACHINE = new Viewer.Machine("tasks");

    private final Households households;
    private final Accounts accounts;
    private final OnCall onCall;

    Asking(Households households, Accounts accounts, OnCall onCall) {
        this.households = households;
        this.accounts = accounts;
        this.onCall = onCall;
    }

    List<Choice> choices(ChildId child) {
        var linked = households.caregivers(MACHINE, child);
        var known =
                accounts.byId(MACHINE, linked.stream().map(Caregiver::account).toList());
        var acting = linked.stream()
                .filter(caregiver -> caregiver.reach() == Reach.FULL)
                .map(caregiver -> known.get(caregiver.account()))
                .filter(java.util.Objects::nonNull)
                .filter(account -> account.state() != Account.State.DISABLED)
                .sorted(Comparator.comparing(Account::name))
                .toList();
        var choices = new ArrayList<Choice>();
        if (!acting.isEmpty()) {
            choices.add(new Choice(new Assignee.Family(), "", languages(known)));
        }
        if (acting.size() > 1) {
            acting.forEach(account -> choices.add(
                    new Choice(new Assignee.Caregiver(account.id()), account.name(), EnumSet.of(account.language()))));
        }
        Assignee.ROLES.forEach(role -> choices.add(new Choice(new Assignee.AnyOf(role), "", Set.of())));
        onCall.able(MACHINE).stream()
                .sorted(Comparator.comparing(Account::name))
                .forEach(account ->
                        choices.add(new Choice(new Assignee.Person(account.id()), account.name(), Set.of())));
        return List.copyOf(choices);
    }

    /** Who may only look reads it all the same. */
    private static Set<Language> languages(Map<AccountId, Account> family) {
        return family.values().stream()
                .filter(account -> account.state() != Account.State.DISABLED)
                .map(Account::language)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Language.class)));
    }
}
