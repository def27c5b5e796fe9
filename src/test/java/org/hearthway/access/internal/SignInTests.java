package org.hearthway.access.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesRegex;
import static org.hamcrest.Matchers.not;
import static org.hearthway.testing.SignInRequests.PASSWORD;
import static org.hearthway.testing.SignInRequests.signIn;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.Cookie;
import java.time.Duration;
import java.util.Map;
import java.util.Objects;
import org.hearthway.access.Accounts;
import org.hearthway.access.Passwords;
import org.hearthway.base.AccountId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.testing.SignInRequests;
import org.hearthway.testing.WebTest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;

@WebTest
@Import(SignInRequests.class)
class SignInTests {

    @Autowired
    private MockMvc web;

    @Autowired
    private SignInRequests people;

    @Autowired
    private Accounts accounts;

    @Autowired
    private Passwords passwords;

    @Autowired
    private SignInDelays delays;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private SettableClock clock;

    @AfterEach
    void backToTheStart() {
        clock.set(HearthwayTest.START);
    }

    private String hash(AccountId account) {
        return jdbc.sql("select password_hash from account where id = :id")
                .param("id", account.value())
                .query(String.class)
                .single();
    }

    private static MockHttpSession session(MvcResult result) {
        return (MockHttpSession) Objects.requireNonNull(result.getRequest().getSession(false));
    }

    private String whereOneBegins(SignInRequests.Somebody somebody) throws Exception {
        var signedIn = web.perform(signIn(somebody.email(), PASSWORD))
                .andExpect(redirectedUrl("/"))
                .andReturn();
        var door = web.perform(get("/").session(session(signedIn)))
                .andExpect(status().isFound())
                .andReturn();
        return Objects.requireNonNull(door.getResponse().getRedirectedUrl());
    }

    @Test
    void leadsEachToWhereTheyBegin() throws Exception {
        assertThat(whereOneBegins(people.fresh(Role.THERAPIST))).isEqualTo("/staff/needs");
        assertThat(whereOneBegins(people.fresh(Role.NURSE))).isEqualTo("/staff/needs");
        assertThat(whereOneBegins(people.fresh(Role.COORDINATOR))).isEqualTo("/staff/desk");
        assertThat(whereOneBegins(people.fresh(Role.ADMINISTRATOR))).isEqualTo("/staff/clinic");
        var parent = people.fresh(Role.CAREGIVER);
        assertThat(whereOneBegins(parent)).isEqualTo("/no-child-yet");

        var child = Children.enter(register);
        households.link(People.with(Role.ADMINISTRATOR), child, parent.account(), Households.Reach.VIEW_ONLY);
        assertThat(whereOneBegins(parent)).isEqualTo("/my/" + child + "/today");
    }

    @Test
    void leadsAStrangerToTheSignInPage() throws Exception {
        web.perform(get("/")).andExpect(redirectedUrl("/sign-in"));
        web.perform(get("/no-child-yet")).andExpect(redirectedUrl("http://localhost/sign-in"));
        web.perform(get("/sign-in?lang=es"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("lang=\"es\"")));
    }

    @Test
    void answersAnUnknownAddressLikeAWrongPassword() throws Exception {
        var somebody = people.fresh(Role.THERAPIST);
        var invited = accounts.invite(
                People.with(Role.ADMINISTRATOR),
                new org.hearthway.access.NewAccount(
                        "Rolf",
                        People.freshEmail(),
                        "",
                        java.util.Set.of(Role.NURSE),
                        org.hearthway.base.Language.EN,
                        People.ZONE));
        var invitedEmail = accounts.byId(People.with(Role.NURSE), java.util.List.of(invited.account()))
                .get(invited.account())
                .email();
        var disabled = people.fresh(Role.NURSE);
        accounts.disable(People.with(Role.ADMINISTRATOR), disabled.account());

        for (int tries = 1; tries <= 7; tries++) {
            var expected = tries <= 5 ? "/sign-in?wrong" : "/sign-in?wait";
            web.perform(signIn(somebody.email(), "not the password at all")).andExpect(redirectedUrl(expected));
            web.perform(signIn("nobody@people.example", PASSWORD)).andExpect(redirectedUrl(expected));
            web.perform(signIn(invitedEmail, PASSWORD)).andExpect(redirectedUrl(expected));
            web.perform(signIn(disabled.email(), PASSWORD)).andExpect(redirectedUrl(expected));
        }
    }

    @Test
    void keepsTheAddressThatWasTyped() throws Exception {
        var failed = web.perform(signIn("<b>ana</b>@x.example", "wrong")).andReturn();

        web.perform(get("/sign-in?wrong").session(session(failed)))
                .andExpect(content().string(containsString("&lt;b&gt;ana&lt;/b&gt;@x.example")))
                .andExpect(content().string(not(containsString("<b>ana"))));
    }

    @Test
    void waitsLongerAfterEachWrongPasswordAndLetsTheRightOneInAfterTheWait() throws Exception {
        var parent = people.fresh(Role.CAREGIVER);
        for (int tries = 1; tries <= 5; tries++) {
            web.perform(signIn(parent.email(), "wrong " + tries)).andExpect(redirectedUrl("/sign-in?wrong"));
        }
        web.perform(signIn(parent.email(), PASSWORD)).andExpect(redirectedUrl("/sign-in?wait"));

        clock.advance(Duration.ofSeconds(5));

        web.perform(signIn(parent.email(), PASSWORD)).andExpect(redirectedUrl("/"));
        web.perform(signIn(parent.email(), "wrong again")).andExpect(redirectedUrl("/sign-in?wrong"));
    }

    @Test
    void neverWaitsLongerThanAQuarterOfAnHour() {
        assertThat(SignInDelays.after(4)).isZero();
        assertThat(SignInDelays.after(5)).isEqualTo(Duration.ofSeconds(5));
        assertThat(SignInDelays.after(6)).isEqualTo(Duration.ofSeconds(10));
        assertThat(SignInDelays.after(12)).isEqualTo(Duration.ofSeconds(640));
        assertThat(SignInDelays.after(13)).isEqualTo(Duration.ofMinutes(15));
        assertThat(SignInDelays.after(1_000_000)).isEqualTo(Duration.ofMinutes(15));
    }

    @Test
    void aStrangersGuessesDoNotKeepTheRightPersonOutOnAKnownDevice() throws Exception {
        var parent = people.fresh(Role.CAREGIVER);
        var device = deviceOf(parent);
        for (int tries = 1; tries <= 20; tries++) {
            web.perform(signIn(parent.email(), "guess " + tries));
        }
        web.perform(signIn(parent.email(), PASSWORD)).andExpect(redirectedUrl("/sign-in?wait"));

        web.perform(signIn(parent.email(), PASSWORD).cookie(device)).andExpect(redirectedUrl("/"));
    }

    /** AU4: with all the patience of the world, of a thousand guesses a hundred are looked at; then two ways lead in. */
    @Test
    void looksAtAHundredGuessesAndThenAtNoneUntilThePersonComesFromAKnownDeviceOrWithANewLink() throws Exception {
        var parent = people.fresh(Role.CAREGIVER);
        var device = deviceOf(parent);
        assertThat(looked(parent.account())).isEqualTo(SignInDelays.MOST);
        clock.advance(Duration.ofDays(400));
        web.perform(signIn(parent.email(), PASSWORD)).andExpect(redirectedUrl("/sign-in?wait"));

        web.perform(signIn(parent.email(), PASSWORD).cookie(device)).andExpect(redirectedUrl("/"));

        web.perform(signIn(parent.email(), PASSWORD)).andExpect(redirectedUrl("/"));
        assertThat(looked(parent.account())).isEqualTo(SignInDelays.MOST);
        var link = accounts.renewLink(People.with(Role.ADMINISTRATOR), parent.account());
        passwords.set(SignInRequests.tokenOf(link), PASSWORD);
        web.perform(signIn(parent.email(), PASSWORD)).andExpect(redirectedUrl("/"));
    }

    private Cookie deviceOf(SignInRequests.Somebody somebody) throws Exception {
        return Objects.requireNonNull(web.perform(signIn(somebody.email(), PASSWORD))
                .andReturn()
                .getResponse()
                .getCookie("hearthway-device"));
    }

    /** How many of a thousand guesses, a quarter of an hour apart, are looked at. */
    private int looked(AccountId account) {
        var looked = 0;
        for (int guess = 0; guess < 1000; guess++) {
            clock.advance(Duration.ofMinutes(15));
            looked += delays.begin(account, false) ? 1 : 0;
        }
        return looked;
    }

    /** AU4: within one network the guesser waits, too, and the parent on a known device does not. */
    @Test
    void slowsDownOneNetworkThatTriesManyAccountsAndNotAKnownDeviceInIt() throws Exception {
        var parent = people.fresh(Role.CAREGIVER);
        var device = deviceOf(parent);
        for (int tries = 1; tries <= 31; tries++) {
            web.perform(signIn("guess" + tries + "@people.example", PASSWORD, "203.0.113.7"))
                    .andExpect(redirectedUrl("/sign-in?wrong"));
        }

        web.perform(signIn("guess32@people.example", PASSWORD, "203.0.113.7"))
                .andExpect(redirectedUrl("/sign-in?wait"));
        web.perform(signIn(parent.email(), PASSWORD, "203.0.113.7")).andExpect(redirectedUrl("/sign-in?wait"));
        web.perform(signIn(parent.email(), PASSWORD, "203.0.113.7").cookie(device))
                .andExpect(redirectedUrl("/"));
        web.perform(signIn(parent.email(), PASSWORD, "203.0.113.8")).andExpect(redirectedUrl("/"));
        clock.advance(Duration.ofSeconds(5));
        web.perform(signIn(parent.email(), PASSWORD, "203.0.113.7")).andExpect(redirectedUrl("/"));
    }

    @Test
    void takesAllAddressesOfOneNetworkForOne() {
        assertThat(SignInFrom.network("2001:db8:1:2::1"))
                .isEqualTo(SignInFrom.network("2001:db8:1:2:ffff:0:0:9"))
                .isNotEqualTo(SignInFrom.network("2001:db8:1:3::1"));
        assertThat(SignInFrom.network("203.0.113.7")).isNotEqualTo(SignInFrom.network("203.0.113.8"));
        assertThat(SignInFrom.network("::ffff:203.0.113.7")).isEqualTo("::ffff:203.0.113.7");
        assertThat(SignInFrom.network("not:an:address")).isEqualTo("not:an:address");
    }

    @Test
    void aNetworkFromWhichManyComeInNeverWaits() {
        var parent = people.fresh(Role.CAREGIVER);
        for (int morning = 0; morning < 200; morning++) {
            assertThat(delays.beginFrom("203.0.113.9")).isTrue();
            delays.succeeded(parent.account(), false, "203.0.113.9");
        }
    }

    /** AU3. */
    @Test
    void keepsPasswordsAsArgon2idWith19MebibytesTwoRoundsOneLane() {
        // the setting of the OWASP Password Storage Cheat Sheet
        assertThat(hash(people.fresh(Role.NURSE).account())).startsWith("{argon2id}$argon2id$v=19$m=19456,t=2,p=1$");
    }

    /** AU3. */
    @Test
    void raisesAnOlderHashAtTheNextSignIn() throws Exception {
        var nurse = people.fresh(Role.NURSE);
        var older = "{argon2id}" + new Argon2PasswordEncoder(16, 32, 1, 4096, 1).encode(PASSWORD);
        jdbc.sql("update account set password_hash = :hash where id = :id")
                .param("hash", older)
                .param("id", nurse.account().value())
                .update();

        web.perform(signIn(nurse.email(), PASSWORD)).andExpect(redirectedUrl("/"));

        assertThat(hash(nurse.account())).contains("m=19456,t=2,p=1");
        web.perform(signIn(nurse.email(), PASSWORD)).andExpect(redirectedUrl("/"));
    }

    /** AU7. */
    @Test
    void givesTheSessionANewNameSoThatOneHandedToThePersonIsWorthNothing() throws Exception {
        var nurse = people.fresh(Role.NURSE);
        var handed = session(web.perform(get("/sign-in")).andReturn());
        var before = handed.getId();

        var after = session(
                web.perform(signIn(nurse.email(), PASSWORD).session(handed)).andReturn());

        assertThat(after.getId()).isNotEqualTo(before);
    }

    /** AU7. */
    @Test
    void endsAtSignOut() throws Exception {
        var session = session(
                web.perform(signIn(people.fresh(Role.NURSE).email(), PASSWORD)).andReturn());

        // no such page: the component library answers, which has no servlet here
        assertThatThrownBy(() -> web.perform(
                        get("/sign-out").header("Sec-Fetch-Site", "cross-site").session(session)))
                .isInstanceOf(ServletException.class);
        assertThat(session.isInvalid()).as("another site cannot sign out").isFalse();
        web.perform(get("/sign-out").header("Sec-Fetch-Site", "same-origin").session(session))
                .andExpect(redirectedUrl("/sign-in"));

        assertThat(session.isInvalid()).isTrue();
    }

    /** AU7. */
    @Test
    void disablingEndsEverySessionOfThePersonAndLetsNobodyBackIn() throws Exception {
        var nurse = people.fresh(Role.NURSE);
        var desk = session(web.perform(signIn(nurse.email(), PASSWORD)).andReturn());
        var home = session(web.perform(signIn(nurse.email(), PASSWORD)).andReturn());
        web.perform(get("/").session(desk)).andExpect(redirectedUrl("/staff/needs"));

        accounts.disable(People.with(Role.ADMINISTRATOR), nurse.account());

        for (var open : java.util.List.of(desk, home)) {
            web.perform(get("/").session(open)).andExpect(redirectedUrl("/sign-in"));
            assertThat(open.isInvalid()).isTrue();
        }
        web.perform(signIn(nurse.email(), PASSWORD)).andExpect(redirectedUrl("/sign-in?wrong"));

        accounts.enable(People.with(Role.ADMINISTRATOR), nurse.account());
        web.perform(signIn(nurse.email(), PASSWORD)).andExpect(redirectedUrl("/"));
    }

    /** AU7: what a page that is still open sends to the server finds nobody signed in. */
    @Test
    void disablingEndsAPageThatIsOpen() throws Exception {
        var nurse = people.fresh(Role.NURSE);
        var open = session(web.perform(signIn(nurse.email(), PASSWORD)).andReturn());
        accounts.disable(People.with(Role.ADMINISTRATOR), nurse.account());

        // the component library answers, which has no servlet here
        assertThatThrownBy(() -> web.perform(post("/?v-r=uidl&v-uiId=0").session(open)))
                .isInstanceOf(ServletException.class);

        assertThat(open.isInvalid()).isTrue();
    }

    @Test
    void speaksThePersonsLanguageFromTheNextPageOn() throws Exception {
        var parent = people.fresh(Role.CAREGIVER);
        var open = session(web.perform(signIn(parent.email(), PASSWORD)).andReturn());
        web.perform(get("/no-child-yet").session(open))
                .andExpect(content().string(matchesRegex("(?s).*<html\\s+lang=\"en\".*")));

        accounts.speak(People.as(parent.account(), Role.CAREGIVER), Language.ES);

        web.perform(get("/no-child-yet").session(open))
                .andExpect(content().string(matchesRegex("(?s).*<html\\s+lang=\"es\".*")));
        web.perform(get("/no-child-yet?lang=en").session(open))
                .andExpect(content().string(matchesRegex("(?s).*<html\\s+lang=\"en\".*")));
        assertThat(accounts.byId(People.with(Role.NURSE), java.util.List.of(parent.account())))
                .extractingByKey(parent.account())
                .extracting(org.hearthway.access.Account::language)
                .isEqualTo(Language.ES);
    }

    @Test
    void everyAnswerCarriesTheHeadersThatKeepOthersOut() throws Exception {
        for (var page : java.util.List.of("/sign-in", "/welcome/none", "/", "/no-such-page")) {
            web.perform(get(page))
                    .andExpect(header().string("X-Content-Type-Options", "nosniff"))
                    .andExpect(header().string("Referrer-Policy", "no-referrer"))
                    .andExpect(header().string("Cross-Origin-Opener-Policy", "same-origin"))
                    .andExpect(header().string("Cache-Control", containsString("no-store")))
                    .andExpect(header().string("X-Frame-Options", "DENY"))
                    .andExpect(header().string("Content-Security-Policy", containsString("frame-ancestors 'none'")))
                    .andExpect(header().string("Content-Security-Policy", containsString("object-src 'none'")));
        }
        web.perform(get("/sign-in"))
                .andExpect(header().string("Content-Security-Policy", not(containsString("unsafe"))));
    }

    @Test
    void aPhoneStaysSignedInWithATokenThatChangesAtEachUse() throws Exception {
        var parent = people.fresh(Role.CAREGIVER);
        var first = stay(parent);

        var opened = web.perform(get("/").cookie(first))
                .andExpect(redirectedUrl("/no-child-yet"))
                .andReturn();
        var second = phone(opened);

        assertThat(second.getValue()).isNotEqualTo(first.getValue());
        assertThat(second.getMaxAge()).isEqualTo((int) Duration.ofDays(90).toSeconds());
        assertThat(second.isHttpOnly()).isTrue();
        // a request that left the phone together with the first one
        web.perform(get("/").cookie(first)).andExpect(redirectedUrl("/no-child-yet"));
        web.perform(get("/").cookie(second)).andExpect(redirectedUrl("/no-child-yet"));
    }

    private Cookie stay(SignInRequests.Somebody somebody) throws Exception {
        return phone(web.perform(signIn(somebody.email(), PASSWORD).param("stay", "on"))
                .andReturn());
    }

    private static Cookie phone(MvcResult result) {
        return Objects.requireNonNull(result.getResponse().getCookie("hearthway-phone"));
    }

    @Test
    void anAnswerThatNeverArrivedDoesNotSignThePhoneOut() throws Exception {
        var first = stay(people.fresh(Role.CAREGIVER));
        web.perform(get("/").cookie(first));
        clock.advance(Duration.ofHours(9));

        var again = web.perform(get("/").cookie(first))
                .andExpect(redirectedUrl("/no-child-yet"))
                .andReturn();

        web.perform(get("/").cookie(phone(again))).andExpect(redirectedUrl("/no-child-yet"));
    }

    @Test
    void aCopyOfAnOldTokenEndsIt() throws Exception {
        var first = stay(people.fresh(Role.CAREGIVER));
        var second = phone(web.perform(get("/").cookie(first)).andReturn());
        var third = phone(web.perform(get("/").cookie(second)).andReturn());

        web.perform(get("/").cookie(first)).andExpect(redirectedUrl("/sign-in"));

        web.perform(get("/").cookie(third)).andExpect(redirectedUrl("/sign-in"));
    }

    @Test
    void stayingSignedInEndsAfterNinetyDaysAtDisablingAtSignOutAndWithANewPassword() throws Exception {
        var late = stay(people.fresh(Role.CAREGIVER));
        clock.advance(Duration.ofDays(90));
        web.perform(get("/").cookie(late)).andExpect(redirectedUrl("/sign-in"));
        clock.set(HearthwayTest.START);

        var administrator = People.with(Role.ADMINISTRATOR);
        var shutOut = people.fresh(Role.CAREGIVER);
        var phone = stay(shutOut);
        accounts.disable(administrator, shutOut.account());
        accounts.enable(administrator, shutOut.account());
        web.perform(get("/").cookie(phone)).andExpect(redirectedUrl("/sign-in"));

        var left = stay(people.fresh(Role.CAREGIVER));
        web.perform(get("/sign-out").cookie(left));
        web.perform(get("/").cookie(left)).andExpect(redirectedUrl("/sign-in"));
    }

    @Test
    void staffNeverStaySignedIn() throws Exception {
        var both = people.fresh(Role.CAREGIVER, Role.NURSE);

        var signedIn =
                web.perform(signIn(both.email(), PASSWORD).param("stay", "on")).andReturn();

        assertThat(signedIn.getResponse().getCookie("hearthway-phone")).isNull();
    }

    /** AU6. */
    @Test
    void aDumpOfTheTablesHoldsNoTokenThatOpensAnything() throws Exception {
        var parent = people.fresh(Role.CAREGIVER);
        var phone = stay(parent);
        var invitation = accounts.renewLink(People.with(Role.ADMINISTRATOR), parent.account());
        var link = SignInRequests.tokenOf(invitation);

        var dump = new StringBuilder();
        for (var table :
                java.util.List.of("account", "access_link", "remembered_phone", "audit_line", "sign_in_delay")) {
            for (Map<String, Object> row :
                    jdbc.sql("select * from " + table).query().listOfRows()) {
                dump.append(row.values());
            }
        }

        assertThat(dump.toString())
                .contains(parent.email())
                .doesNotContain(phone.getValue())
                .doesNotContain(phone.getValue().substring(22))
                .doesNotContain(link)
                .doesNotContain(link.substring(22))
                .doesNotContain(PASSWORD);
    }
}
