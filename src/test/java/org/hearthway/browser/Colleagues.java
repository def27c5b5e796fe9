package org.hearthway.browser;

import java.time.ZoneId;
import java.util.Set;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.access.Passwords;
import org.hearthway.base.AccountId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;

/** People of a real clinic in the walks: each has an account of its name and signs in with one password. */
public final class Colleagues {

    private static final Viewer SETUP = new Viewer.Machine("test");
    private static final String PASSWORD = "seven quiet stones by the river";
    private static final ZoneId ZONE = ZoneId.of("America/New_York");

    private Colleagues() {}

    /** Gives somebody an account and the password. */
    public static AccountId account(RunningClinic clinic, String name, Role role) {
        var invitation = clinic.part(Accounts.class)
                .invite(SETUP, new NewAccount(name, name + "@clinic.example", "", Set.of(role), Language.EN, ZONE));
        var token = invitation.url().substring(invitation.url().lastIndexOf('/') + 1);
        clinic.part(Passwords.class).set(token, PASSWORD);
        return invitation.account();
    }

    /** The one behind an account, to act without a screen. */
    public static Viewer.Person person(AccountId account, Role role) {
        return new Viewer.Person(account, "somebody", Set.of(role), Language.EN, ZONE);
    }

    /** Signs somebody in by name. */
    public static void signIn(Browser browser, String name) {
        browser.open("/sign-in")
                .type("Email", name + "@clinic.example")
                .type("Password", PASSWORD)
                .press("Sign in");
        browser.waitFor("signing in", () -> !browser.path().startsWith("/sign-in"));
    }
}
