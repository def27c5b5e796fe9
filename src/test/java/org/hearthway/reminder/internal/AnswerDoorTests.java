package org.hearthway.reminder.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.head;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.access.Accounts;
import org.hearthway.access.Links;
import org.hearthway.access.NewAccount;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.testing.WebTest;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** The page behind a reminder's link. */
@WebTest
class AnswerDoorTests {

    private static final Viewer.Person COORDINATOR = People.with(Role.COORDINATOR);
    private static final LocalDateTime TUESDAY = LocalDateTime.of(2026, 3, 24, 10, 30);
    private static final LocalDateTime WEDNESDAY = LocalDateTime.of(2026, 3, 25, 14, 0);

    @Autowired
    private MockMvc web;

    @Autowired
    private Accounts accounts;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Visits visits;

    @Autowired
    private OutboxRows rows;

    @Autowired
    private Links links;

    @Autowired
    private SettableClock clock;

    @AfterEach
    void backToTheStart() {
        clock.set(HearthwayTest.START);
    }

    private record Asked(VisitId visit, String page) {}

    private Asked ask(Language language) {
        var child = Children.enter(register);
        link(child, language);
        var visit =
                visits.book(COORDINATOR, child, new Visits.Booking("therapy", TUESDAY, 45, "Gym", Optional.empty()));
        return new Asked(visit, "/v/" + links.token(rows.linksOf(visit).get(0)));
    }

    private void link(ChildId child, Language language) {
        var administrator = People.with(Role.ADMINISTRATOR);
        var parent = accounts.invite(
                administrator,
                new NewAccount("Somebody", People.freshEmail(), "", Set.of(Role.CAREGIVER), language, People.ZONE));
        households.link(administrator, child, parent.account(), Households.Reach.FULL);
    }

    private Visit now(VisitId visit) {
        return visits.get(COORDINATOR, visit);
    }

    @Test
    void twentyFetchesChangeNothingAndOnePostConfirms() throws Exception {
        var asked = ask(Language.EN);
        var before = now(asked.visit());
        for (int i = 0; i < 10; i++) {
            web.perform(get(asked.page()))
                    .andExpect(status().isOk())
                    .andExpect(content().string(containsString("Tuesday, March 24")))
                    .andExpect(content().string(containsString("10:30 AM")));
            web.perform(head(asked.page())).andExpect(status().isOk());
        }
        assertThat(now(asked.visit())).isEqualTo(before);

        web.perform(post(asked.page() + "/yes").param("sequence", "0").with(csrf()))
                .andExpect(redirectedUrl(asked.page()));

        assertThat(now(asked.visit()).answer()).isEqualTo(Visit.Answer.CONFIRMED);
        web.perform(get(asked.page())).andExpect(content().string(containsString("You said yes.")));
    }

    @Test
    void aPostFromElsewhereIsRefused() throws Exception {
        var asked = ask(Language.EN);
        web.perform(post(asked.page() + "/yes").param("sequence", "0")).andExpect(status().isForbidden());
        assertThat(now(asked.visit()).answer()).isEqualTo(Visit.Answer.NONE);
    }

    @Test
    void afterAMoveTheOldLinkShowsTheNewTimeAndAsksAgain() throws Exception {
        var asked = ask(Language.EN);
        web.perform(post(asked.page() + "/yes").param("sequence", "0").with(csrf()));
        visits.move(COORDINATOR, asked.visit(), WEDNESDAY, now(asked.visit()).version());

        web.perform(get(asked.page()))
                .andExpect(content().string(containsString("Your visit has a new time")))
                .andExpect(content().string(containsString("Wednesday, March 25")))
                .andExpect(content().string(containsString("Yes, we come")));
        web.perform(post(asked.page() + "/yes").param("sequence", "0").with(csrf()))
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("The time changed while this page was open.")));
        assertThat(now(asked.visit()).answer()).isEqualTo(Visit.Answer.NONE);
    }

    @Test
    void aWishThatIsTooLongIsRefusedAndKept() throws Exception {
        var asked = ask(Language.EN);
        var wish = "<b>any</b> ".repeat(60);
        web.perform(post(asked.page() + "/move")
                        .param("sequence", "0")
                        .param("wish", wish)
                        .with(csrf()))
                .andExpect(status().isBadRequest())
                .andExpect(content().string(containsString("500")))
                .andExpect(content().string(containsString("&lt;b&gt;any&lt;/b&gt;")))
                .andExpect(content().string(not(containsString("<b>any</b>"))));
        assertThat(now(asked.visit()).answer()).isEqualTo(Visit.Answer.NONE);
    }

    @Test
    void askingToMoveKeepsTheSlot() throws Exception {
        var asked = ask(Language.EN);
        web.perform(post(asked.page() + "/move")
                        .param("sequence", "0")
                        .param("wish", "after school")
                        .with(csrf()))
                .andExpect(redirectedUrl(asked.page()));
        assertThat(now(asked.visit()).answer()).isEqualTo(Visit.Answer.ASKED_TO_MOVE);
        assertThat(now(asked.visit()).start()).isEqualTo(TUESDAY);
        web.perform(get(asked.page())).andExpect(content().string(containsString("after school")));
    }

    @Test
    void aCancelledVisitAndAWrongLinkSaySo() throws Exception {
        var asked = ask(Language.EN);
        visits.cancel(COORDINATOR, asked.visit(), now(asked.visit()).version());
        web.perform(get(asked.page())).andExpect(content().string(containsString("This visit is cancelled")));
        web.perform(get("/v/nothing"))
                .andExpect(status().isNotFound())
                .andExpect(content().string(containsString("555-0134")));
    }

    @Test
    void theLinkEndsWithTheVisit() throws Exception {
        var asked = ask(Language.EN);
        clock.set(now(asked.visit()).endsAt());
        web.perform(get(asked.page())).andExpect(status().isNotFound());
    }

    @Test
    void aSpanishReaderIsSpokenToInSpanishAndNoChildIsNamed() throws Exception {
        var asked = ask(Language.ES);
        web.perform(get(asked.page()))
                .andExpect(content().string(containsString("martes, 24 de marzo")))
                .andExpect(content().string(not(containsString("Wren"))))
                .andExpect(content().string(not(containsString("Halloway"))));
    }

    @Test
    void theLanguageThatWasAskedForStaysThroughTheAnswer() throws Exception {
        var asked = ask(Language.EN);
        web.perform(get(asked.page() + "?lang=es"))
                .andExpect(content().string(containsString("name=\"lang\" value=\"es\"")));

        web.perform(post(asked.page() + "/yes")
                        .param("sequence", "0")
                        .param("lang", "es")
                        .with(csrf()))
                .andExpect(redirectedUrl(asked.page() + "?lang=es"));
        web.perform(post(asked.page() + "/move")
                        .param("sequence", "0")
                        .param("wish", "x".repeat(501))
                        .param("lang", "es")
                        .with(csrf()))
                .andExpect(content().string(containsString("Su cita · Hearthway")));

        web.perform(get(asked.page() + "/yes?lang=es")).andExpect(redirectedUrl(asked.page() + "?lang=es"));
        web.perform(get(asked.page() + "/move?lang=xx")).andExpect(redirectedUrl(asked.page()));
        web.perform(get(asked.page())).andExpect(content().string(not(containsString("name=\"lang\""))));
    }

    @Test
    void takesAWishOfFiveHundredCharactersAndNoneOfOneMore() throws Exception {
        var asked = ask(Language.EN);

        web.perform(post(asked.page() + "/move")
                        .param("sequence", "0")
                        .param("wish", "w".repeat(501))
                        .with(csrf()))
                .andExpect(status().isBadRequest())
                .andExpect(content().string(containsString("may have 500 characters; this has 501")))
                .andExpect(content().string(containsString("w".repeat(501))));
        assertThat(now(asked.visit()).answer()).isEqualTo(Visit.Answer.NONE);

        web.perform(post(asked.page() + "/move")
                        .param("sequence", "0")
                        .param("wish", "w".repeat(500))
                        .with(csrf()))
                .andExpect(redirectedUrl(asked.page()));
        assertThat(now(asked.visit()).wish()).isEqualTo("w".repeat(500));
    }

    @Test
    void aVisitThatTheClinicNotedAsOverTakesNoAnswerAnyMore() throws Exception {
        var asked = ask(Language.EN);
        visits.attended(COORDINATOR, asked.visit(), true, now(asked.visit()).version());
        var over = now(asked.visit());

        web.perform(get(asked.page()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("This visit is over")))
                .andExpect(content().string(not(containsString("<form"))));
        postBoth(asked);

        assertThat(now(asked.visit())).isEqualTo(over);
    }

    @Test
    void aCancelledVisitTakesNoAnswerAnyMore() throws Exception {
        var asked = ask(Language.EN);
        visits.cancel(COORDINATOR, asked.visit(), now(asked.visit()).version());
        var cancelled = now(asked.visit());

        postBoth(asked);

        assertThat(now(asked.visit())).isEqualTo(cancelled);
    }

    private void postBoth(Asked asked) throws Exception {
        web.perform(post(asked.page() + "/yes").param("sequence", "0").with(csrf()))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("<form"))));
        web.perform(post(asked.page() + "/move")
                        .param("sequence", "0")
                        .param("wish", "later")
                        .with(csrf()))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("<form"))));
    }

    @Test
    void aWrongTokenAndOneForSomethingElseAnswerNothing() throws Exception {
        var asked = ask(Language.EN);
        var token = asked.page().substring(3);
        var last = token.charAt(token.length() - 2);
        var changed =
                token.substring(0, token.length() - 2) + (last == 'A' ? 'B' : 'A') + token.charAt(token.length() - 1);
        var invitation = accounts.invite(
                People.with(Role.ADMINISTRATOR),
                new NewAccount("Somebody", People.freshEmail(), "", Set.of(Role.CAREGIVER), Language.EN, People.ZONE));
        var password = invitation.url().substring(invitation.url().lastIndexOf('/') + 1);
        var before = now(asked.visit());

        for (var wrong : List.of(changed, password, token.substring(1), token + "A", "nothing")) {
            web.perform(get("/v/" + wrong)).andExpect(status().isNotFound());
            web.perform(post("/v/" + wrong + "/yes").param("sequence", "0").with(csrf()))
                    .andExpect(status().isNotFound());
            web.perform(post("/v/" + wrong + "/move")
                            .param("sequence", "0")
                            .param("wish", "")
                            .with(csrf()))
                    .andExpect(status().isNotFound());
        }
        assertThat(now(asked.visit())).isEqualTo(before);
        // and a link to answer a visit sets no password
        web.perform(get("/welcome/" + token)).andExpect(status().isNotFound());
    }

    @Test
    void theSameAnswerSentTwiceIsOne() throws Exception {
        var asked = ask(Language.EN);
        for (int taps = 0; taps < 2; taps++) {
            web.perform(post(asked.page() + "/yes").param("sequence", "0").with(csrf()))
                    .andExpect(redirectedUrl(asked.page()));
        }
        assertThat(now(asked.visit()).version()).isEqualTo(2);
    }
}
