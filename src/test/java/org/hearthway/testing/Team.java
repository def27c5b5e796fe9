package org.hearthway.testing;

import java.util.Set;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.access.Passwords;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;

/** People of the clinic who can sign in. */
public final class Team {

    private static final String PASSWORD = "seven quiet herons over the marsh";

    private Team() {}

    /** A fresh one who was invited and has set no password yet: enough to be somebody else than another. */
    public static Viewer.Person colleague(Accounts accounts, String name, Role role) {
        var invitation = accounts.invite(
                People.with(Role.ADMINISTRATOR),
                new NewAccount(name, People.freshEmail(), "", Set.of(role), Language.EN, People.ZONE));
        return new Viewer.Person(invitation.account(), name, Set.of(role), Language.EN, People.ZONE);
    }

    /** A fresh one, with an open account. */
    public static Viewer.Person member(Accounts accounts, Passwords passwords, String name, Role role) {
        return member(accounts, passwords, name, role, Language.EN);
    }

    /** The same, reading in a language. */
    public static Viewer.Person member(
            Accounts accounts, Passwords passwords, String name, Role role, Language language) {
        var invitation = accounts.invite(
                People.with(Role.ADMINISTRATOR),
                new NewAccount(name, People.freshEmail(), "", Set.of(role), language, People.ZONE));
        passwords.set(SignInRequests.tokenOf(invitation), PASSWORD);
        return new Viewer.Person(invitation.account(), name, Set.of(role), language, People.ZONE);
    }
}
