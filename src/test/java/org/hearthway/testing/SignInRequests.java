package org.hearthway.testing;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.util.concurrent.atomic.AtomicInteger;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.access.Passwords;
import org.hearthway.base.AccountId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.springframework.stereotype.Component;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** People with a password for tests, and the request that signs them in. */
@Component
public class SignInRequests {

    public static final String PASSWORD = "seven quiet lanterns by the river";

    private static final AtomicInteger NETWORKS = new AtomicInteger();

    private final Accounts accounts;
    private final Passwords passwords;

    public SignInRequests(Accounts accounts, Passwords passwords) {
        this.accounts = accounts;
        this.passwords = passwords;
    }

    /** Somebody who can sign in. */
    public record Somebody(AccountId account, String email) {}

    /** A fresh person with a password. */
    public Somebody fresh(Role... roles) {
        var email = People.freshEmail();
        var invitation = accounts.invite(
                People.with(Role.ADMINISTRATOR),
                new NewAccount("Ana Lindgren", email, "", java.util.Set.of(roles), Language.EN, People.ZONE));
        passwords.set(tokenOf(invitation), PASSWORD);
        return new Somebody(invitation.account(), email);
    }

    /** The token at the end of an invitation's address. */
    public static String tokenOf(Accounts.Invitation invitation) {
        return invitation.url().substring(invitation.url().lastIndexOf('/') + 1);
    }

    /** The sign-in form, sent from a network of its own. */
    public static MockHttpServletRequestBuilder signIn(String email, String password) {
        return signIn(email, password, "2001:db8:0:" + Integer.toHexString(NETWORKS.incrementAndGet()) + "::1");
    }

    /** The sign-in form, sent from this network. */
    public static MockHttpServletRequestBuilder signIn(String email, String password, String network) {
        return post("/sign-in")
                .with(csrf())
                .with(request -> {
                    request.setRemoteAddr(network);
                    return request;
                })
                .param("email", email)
                .param("password", password);
    }
}
