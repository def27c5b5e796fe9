package org.hearthway.access.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesRegex;
import static org.hamcrest.Matchers.not;
import static org.hearthway.testing.SignInRequests.PASSWORD;
import static org.hearthway.testing.SignInRequests.signIn;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.head;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.servlet.http.Cookie;
import java.time.Duration;
import java.util.Objects;
import java.util.Set;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.testing.SignInRequests;
import org.hearthway.testing.WebTest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.test.web.servlet.MockMvc;

@WebTest
@Import(SignInRequests.class)
class WelcomeTests {

    @Autowired
    private MockMvc web;

    @Autowired
    private SignInRequests people;

    @Autowired
    private Accounts accounts;

    @Autowired
    private SettableClock clock;

    @AfterEach
    void backToTheStart() {
        clock.set(HearthwayTest.START);
    }

    private Accounts.Invitation invite(String email, Language language) {
        return accounts.invite(
                People.with(Role.ADMINISTRATOR),
                new NewAccount("Inés Roca", email, "", Set.of(Role.CAREGIVER), language, People.ZONE));
    }

    private static String page(Accounts.Invitation invitation) {
        return "/welcome/" + SignInRequests.tokenOf(invitation);
    }

    /** AU6. */
    @Test
    void aPersonSetsAPasswordOnceAndSignsInWithIt() throws Exception {
        var email = People.freshEmail();
        var page = page(invite(email, Language.EN));
        for (int scans = 0; scans < 20; scans++) {
            web.perform(get(page)).andExpect(status().isOk());
            web.perform(head(page)).andExpect(status().isOk());
        }
        web.perform(signIn(email, PASSWORD)).andExpect(redirectedUrl("/sign-in?wrong"));

        web.perform(post(page).with(csrf()).param("password", PASSWORD)).andExpect(redirectedUrl("/sign-in?ready"));

        web.perform(signIn(email, PASSWORD)).andExpect(redirectedUrl("/"));
        web.perform(get(page))
                .andExpect(status().isNotFound())
                .andExpect(content().string(containsString("555-0134")));
        web.perform(post(page).with(csrf()).param("password", "another one that is long"))
                .andExpect(status().isNotFound());
        web.perform(signIn(email, PASSWORD)).andExpect(redirectedUrl("/"));
    }

    @Test
    void thePageSpeaksThePersonsLanguage() throws Exception {
        web.perform(get(page(invite(People.freshEmail(), Language.ES))))
                .andExpect(content().string(containsString("Hola, Inés Roca")));
    }

    @Test
    void aPasswordThatWillNotDoLeavesTheLinkWhole() throws Exception {
        var page = page(invite(People.freshEmail(), Language.EN));

        web.perform(post(page).with(csrf()).param("password", "too short"))
                .andExpect(status().isBadRequest())
                .andExpect(content().string(containsString("at least 15 characters")))
                .andExpect(content().string(not(containsString("too short"))));

        web.perform(post(page).with(csrf()).param("password", PASSWORD)).andExpect(redirectedUrl("/sign-in?ready"));
    }

    /** AU6. */
    @Test
    void aLinkEndsAfterSevenDaysAndWhenANewOneIsMade() throws Exception {
        var first = invite(People.freshEmail(), Language.EN);
        var second = accounts.renewLink(People.with(Role.ADMINISTRATOR), first.account());

        web.perform(get(page(first))).andExpect(status().isNotFound());
        web.perform(get(page(second))).andExpect(status().isOk());
        clock.advance(Duration.ofDays(7));
        web.perform(get(page(second))).andExpect(status().isNotFound());
        web.perform(get("/welcome/" + "A".repeat(54))).andExpect(status().isNotFound());
    }

    /** AU7. */
    @Test
    void aNewPasswordEndsEverySignInThatIsOpen() throws Exception {
        var parent = people.fresh(Role.CAREGIVER);
        var signedIn = web.perform(signIn(parent.email(), PASSWORD).param("stay", "on"))
                .andReturn();
        var session =
                (MockHttpSession) Objects.requireNonNull(signedIn.getRequest().getSession(false));
        Cookie phone = signedIn.getResponse().getCookie("hearthway-phone");
        var link = accounts.renewLink(People.with(Role.ADMINISTRATOR), parent.account());

        web.perform(post(page(link)).with(csrf()).param("password", "five other words than before"))
                .andExpect(redirectedUrl("/sign-in?ready"));

        web.perform(get("/").session(session)).andExpect(redirectedUrl("/sign-in"));
        web.perform(get("/").cookie(phone)).andExpect(redirectedUrl("/sign-in"));
        web.perform(signIn(parent.email(), PASSWORD)).andExpect(redirectedUrl("/sign-in?wrong"));
        assertThat(session.isInvalid()).isTrue();
    }

    @Test
    void theLanguageThatWasAskedForStaysThroughARefusal() throws Exception {
        var page = page(invite(People.freshEmail(), Language.EN));

        web.perform(get(page + "?lang=es")).andExpect(content().string(containsString("name=\"lang\" value=\"es\"")));

        web.perform(post(page).with(csrf()).param("password", "corta").param("lang", "es"))
                .andExpect(status().isBadRequest())
                .andExpect(content().string(matchesRegex("(?s).*<html\\s+lang=\"es\".*")));
        web.perform(get(page + "/first?lang=es")).andExpect(redirectedUrl(page + "?lang=es"));
    }

    @Test
    void aFormWithoutItsTokenAgainstForgeryChangesNothing() throws Exception {
        var page = page(invite(People.freshEmail(), Language.EN));

        web.perform(post(page).param("password", PASSWORD)).andExpect(status().isForbidden());

        web.perform(get(page)).andExpect(status().isOk());
    }
}
