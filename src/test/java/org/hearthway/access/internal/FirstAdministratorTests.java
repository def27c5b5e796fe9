package org.hearthway.access.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.Duration;
import java.util.Set;
import org.hamcrest.Matchers;
import org.hearthway.access.NewAccount;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Role;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.testing.SignInRequests;
import org.hearthway.testing.WebTest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.transaction.annotation.Transactional;

@WebTest
@Transactional
class FirstAdministratorTests {

    @Autowired
    private FirstAdministrator first;

    @Autowired
    private MockMvc web;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private SettableClock clock;

    /** Other tests of the same database have administrators; undone at the end of each test. */
    @BeforeEach
    void noAdministratorYet() {
        jdbc.sql("update account set state = 'DISABLED' where state = 'ACTIVE'").update();
    }

    @AfterEach
    void backToTheStart() {
        clock.set(HearthwayTest.START);
    }

    private String token() {
        var url = first.invite().orElseThrow();
        assertThat(url).startsWith("http://localhost:8080/welcome/");
        return url.substring(url.lastIndexOf('/') + 1);
    }

    private static NewAccount somebody(String email) {
        return new NewAccount("Petra Vance", email, "", Set.of(Role.ADMINISTRATOR), Language.EN, People.ZONE);
    }

    @Test
    void opensTheClinicOnceAndIsThenNoLongerOffered() throws Exception {
        var token = token();
        web.perform(get("/welcome/" + token)).andExpect(status().isOk());

        var email = People.freshEmail();
        web.perform(post("/welcome/" + token + "/first")
                        .with(csrf())
                        .param("name", "Petra Vance")
                        .param("email", email)
                        .param("password", SignInRequests.PASSWORD))
                .andExpect(redirectedUrl("/sign-in?ready"));

        assertThat(first.invite()).isEmpty();
        assertThatThrownBy(() -> first.become(token, somebody(People.freshEmail()), SignInRequests.PASSWORD))
                .isInstanceOf(NotAvailable.class);
        web.perform(SignInRequests.signIn(email, SignInRequests.PASSWORD)).andExpect(redirectedUrl("/"));
    }

    @Test
    void saysEverythingThatIsWrongAtOnceAndKeepsWhatWasTyped() throws Exception {
        web.perform(post("/welcome/" + token() + "/first")
                        .with(csrf())
                        .param("name", "Petra Vance")
                        .param("email", "petra without a sign")
                        .param("password", "short"))
                .andExpect(status().isBadRequest())
                .andExpect(content().string(Matchers.containsString("Petra Vance")))
                .andExpect(content().string(Matchers.containsString("petra without a sign")))
                .andExpect(content().string(Matchers.containsString("ana@family.example")))
                .andExpect(content().string(Matchers.containsString("at least 15 characters")));
    }

    @Test
    void theLinkEndsAfterADayAndWhenTheNextStartPrintsAnother() {
        var yesterday = token();
        var today = token();
        assertThat(first.opens(yesterday)).isFalse();
        assertThat(first.opens(today)).isTrue();

        clock.advance(Duration.ofHours(24));

        assertThat(first.opens(today)).isFalse();
    }
}
