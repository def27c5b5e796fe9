package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Households;
import org.hearthway.path.Plans;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Became;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Logged;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.RatedBy;
import org.hearthway.program.HomeWeek.Reason;
import org.hearthway.program.Programs;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.springframework.security.core.session.SessionInformation;
import org.springframework.security.core.session.SessionRegistry;

/** The session on a phone, with and without a signal. It is Thursday, March 12, 2026, or some days later. */
@Order(WalkOrder.LONG)
class PhoneIT {

    private static final LocalDate THURSDAY = LocalDate.of(2026, 3, 12);
    private static final Path PICTURES = Path.of("target", "screens", "phone");
    private static final Viewer.Person THERAPIST = People.with(Role.THERAPIST);
    private static final Viewer FAMILY = new Viewer.Machine("test");
    private static final String TICKS =
            "return Object.keys(localStorage).filter(key => key.startsWith('hw-session|tick|')).length";
    private static final String PLANS =
            "return Object.keys(localStorage).filter(key => key.startsWith('hw-session|plan|')).length";

    private RunningClinic clinic;
    private Browser phone;
    private ChildId juno;

    @BeforeEach
    void begin() {
        clinic = RunningClinic.demo();
        phone = Browser.phone(clinic).clockAt(HearthwayTest.START);
        juno = new Tour(clinic).child("Juno");
    }

    @AfterEach
    void end() {
        phone.close();
        clinic.close();
    }

    private void open() {
        Tour.signIn(phone, Tour.Person.PARENT.mail);
        phone.open("/my/" + juno + "/today").press("Begin, one by one").see("to go.");
        phone.waitFor(
                "the worker", () -> Boolean.TRUE.equals(phone.run("return !!navigator.serviceWorker.controller")));
        phone.waitFor("the pictures", () -> kept("hearthway-session-pictures") >= 8);
    }

    private long kept(String cache) {
        return (Long) phone.run("return caches.open(arguments[0]).then(c => c.keys()).then(k => k.length)", cache);
    }

    private long waiting() {
        return (Long) phone.run(TICKS);
    }

    /** Opens an exercise from the list and says how it went. */
    private void say(String exercise, String outcome, String... more) {
        phone.run("location.hash = ''");
        phone.see(exercise)
                .press(exercise)
                .see("How to do it")
                .press("How did it go?")
                .see("Did it hurt?");
        phone.press(outcome);
        for (var each : more) {
            phone.press(each);
        }
        phone.press("Save and go on").seeNoMore("Did it hurt?");
    }

    private List<Logged> entries() {
        return clinic.part(HomeWeek.class).entries(FAMILY, juno, THURSDAY, THURSDAY.plusDays(8));
    }

    private Logged entry(String exercise, LocalDate day) {
        return entries().stream()
                .filter(logged -> logged.entry().exercise().equals(exercise)
                        && logged.entry().day().equals(day))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing of " + exercise + " on " + day + " in " + entries()));
    }

    private void endAllSessions() {
        var sessions = clinic.part(SessionRegistry.class);
        sessions.getAllPrincipals().stream()
                .flatMap(principal -> sessions.getAllSessions(principal, false).stream())
                .forEach(SessionInformation::expireNow);
    }

    private void laterBy(int days) {
        clinic.clock().set(HearthwayTest.START.plus(Duration.ofDays(days)));
    }

    @Test
    void everyTickOfThreeDaysWithoutASignalComesOnceOnItsRightDay() {
        // this phone's clock is a day fast, and goes on being so
        phone.clockAt(HearthwayTest.START.plus(Duration.ofDays(1)));
        open();
        phone.see("Thursday, March 12").see("The clock of this phone is off.");
        phone.offline(true);
        say("Bridge", "Done", "2 of 10", "I think so");
        phone.see("1 tick waits for a signal.");
        say("Tummy lying", "Some of it");
        phone.run("location.hash = ''");
        phone.see("Two to go.").picture(PICTURES.resolve("waits.png"));

        laterBy(1);
        phone.clockAt(HearthwayTest.START.plus(Duration.ofDays(2))).reload().see("Friday, March 13");
        phone.see("Plan from yesterday.");
        say("Bridge", "Done");
        say("Straight-leg raise", "Done");
        laterBy(2);
        phone.run("location.hash = ''");
        phone.clockAt(HearthwayTest.START.plus(Duration.ofDays(3))).reload().see("Saturday, March 14");
        say("Bridge", "Could not", "Too tired");
        assertThat(waiting()).isEqualTo(5);
        assertThat(entries()).isEmpty();

        whatHappenedMeanwhile();
        laterBy(3);
        endAllSessions();
        phone.offline(false);
        phone.run("dispatchEvent(new Event('online'))");
        phone.see("You are signed out. Your ticks are kept.").see("5 ticks wait for a signal.");
        phone.picture(PICTURES.resolve("signed-out.png"));
        phone.press("Sign in again").at("/sign-in");
        phone.type("email", Tour.Person.PARENT.mail).type("password", "lantern on the porch step");
        phone.pressAt("main form button[type=submit]");
        phone.at("/session/" + juno);
        phone.waitFor("everything to be sent", () -> waiting() == 0);
        phone.see("Sunday, March 15")
                .see("Your team has paused “Tummy lying” since then.")
                .see("“Straight-leg raise” is no longer in the program.");
        phone.picture(PICTURES.resolve("news.png")).accessible("the news of late ticks");

        assertThat(entries()).hasSize(5);
        assertThat(entry("straight-leg-raise", THURSDAY.plusDays(1)).became()).contains(Became.TAKEN_OUT);
        assertThat(entry("prone-elbows", THURSDAY).became()).contains(Became.FORBIDDEN);
        assertThat(entry("bridge", THURSDAY.plusDays(1)).became()).isEmpty();
        assertThat(entry("bridge", THURSDAY.plusDays(2)).entry().reason()).contains(Reason.TIRED);
        var both = entry("bridge", THURSDAY);
        assertThat(both.names()).containsExactly("Ben Albrecht", "Dana Albrecht");
        assertThat(both.entry().outcome()).isEqualTo(Outcome.DONE);
        assertThat(both.entry().pain()).contains(4);
        assertThat(entries())
                .allSatisfy(logged -> assertThat(logged.at().atZone(People.ZONE).toLocalDate())
                        .isEqualTo(logged.entry().day()));
        assertThat(entry("bridge", THURSDAY.plusDays(2)).received())
                .isEqualTo(clinic.clock().instant());

        phone.open("/my/" + juno + "/today?d=" + THURSDAY).see("Ben Albrecht and Dana Albrecht");
        phone.open("/my/" + juno + "/today").see("Your team has paused “Tummy lying” since then.");
        try (var desk = Browser.desk(clinic)) {
            Tour.signIn(desk, Tour.Person.THERAPIST.mail);
            desk.open("/staff/child/" + juno + "/program/how")
                    .see("Came in from a phone after it was changed")
                    .see("a rule of care forbids it. They had version");
            desk.picture(PICTURES.resolve("late.png")).accessible("ticks that came late");
        }
    }

    /** The other parent ticks, the therapist takes an exercise out, a pump is put in and forbids another one. */
    private void whatHappenedMeanwhile() {
        var ben =
                new Viewer.Person(AccountId.random(), "Ben Albrecht", Set.of(Role.CAREGIVER), Language.EN, People.ZONE);
        clinic.part(Households.class).link(People.with(Role.ADMINISTRATOR), juno, ben.account(), Households.Reach.FULL);
        clinic.part(HomeWeek.class)
                .log(
                        ben,
                        juno,
                        new Entry(
                                UUID.randomUUID(),
                                "bridge",
                                THURSDAY,
                                Outcome.COULD_NOT,
                                Optional.of(Reason.NO_TIME),
                                Optional.empty(),
                                Optional.of(4),
                                Optional.of(RatedBy.CHILD),
                                ""));
        var programs = clinic.part(Programs.class);
        var latest = programs.latest(THERAPIST, juno).orElseThrow();
        programs.save(
                THERAPIST,
                juno,
                new Programs.Draft(
                        THURSDAY.plusDays(2),
                        latest.lines().stream()
                                .filter(line -> !line.exercise().equals("straight-leg-raise"))
                                .toList(),
                        "Enough of that one"),
                latest.number());
        var plans = clinic.part(Plans.class);
        var start = new Plans.Start(
                "itb", Plans.Beginning.BESIDE, Optional.of("operation"), THURSDAY.plusDays(2), Map.of());
        var physician = People.with(Role.PHYSICIAN);
        plans.begin(
                physician,
                juno,
                start,
                "operated on elsewhere",
                plans.outlook(physician, juno, start).version());
    }

    @Test
    void anAnswerThatIsLostOnItsWayMakesNoSecondTick() {
        open();
        phone.run("""
                const real = window.fetch;
                window.fetch = async (...asked) => {
                  const answer = await real(...asked);
                  if (String(asked[0]).endsWith('/ticks') && !window.lost) { window.lost = true; throw new TypeError('lost'); }
                  return answer;
                };""");
        say("Bridge", "Done");
        phone.waitFor("the entry", () -> entries().size() == 1);
        assertThat(waiting()).isEqualTo(1);
        phone.run("dispatchEvent(new Event('online'))");
        phone.waitFor("the answer", () -> waiting() == 0);
        assertThat(entries()).hasSize(1);
        phone.run("location.hash = ''");
        phone.see("Done at 10:00").seeNoMore("waits for a signal");
    }

    @Test
    void aDayThatHasNotComeIsRefusedInWordsAndStaysOnThePhone() {
        open();
        phone.offline(true);
        // the clock jumps while nobody is there to tell
        phone.clockAt(HearthwayTest.START.plus(Duration.ofDays(1))).reload().see("Friday, March 13");
        say("Bridge", "Done");
        phone.offline(false);
        phone.run("location.hash = ''");
        phone.run("dispatchEvent(new Event('online'))");
        phone.see("Not taken: Bridge, Friday, March 13").see("to Thu, Mar 12, 2026");
        phone.picture(PICTURES.resolve("refused.png")).accessible("a tick that was refused");
        assertThat(entries()).isEmpty();
        assertThat(waiting()).isEqualTo(1);
        phone.press("Put it on today").seeNoMore("Not taken").see("Three to go.");
        phone.waitFor("the entry", () -> waiting() == 0);
        assertThat(entry("bridge", THURSDAY).entry().outcome()).isEqualTo(Outcome.DONE);
    }

    @Test
    void severePainShowsTheCallAtOnceAlsoWithoutASignal() {
        open();
        phone.offline(true);
        phone.press("Bridge").press("How did it go?").see("Did it hurt?");
        phone.run("document.querySelectorAll('.hw-scale')[1].querySelectorAll('button')[8].click()");
        phone.see("Stop here. Call.").see("555-0121").picture(PICTURES.resolve("severe.png"));
        assertThat(phone.all(".hw-severe a[href^='tel:']")).hasSize(2);
        phone.press("Save and go on").see("We kept what you told us.").accessible("severe pain");
        phone.open("/session/" + juno).see("Stop here. Call.");
        phone.offline(false);
        phone.run("dispatchEvent(new Event('online'))");
        phone.waitFor("the entry", () -> entries().size() == 1);
        assertThat(entry("bridge", THURSDAY).entry().pain()).contains(8);
        assertThat(entry("bridge", THURSDAY).entry().ratedBy()).contains(RatedBy.ADULT);
    }

    @Test
    void anOldPlanShowsItsAgeAndThenOnlyWhomToCall() {
        open();
        phone.offline(true);
        phone.clockAt(HearthwayTest.START.plus(Duration.ofDays(6))).reload().see("Plan from 6 days ago.");
        phone.clockAt(HearthwayTest.START.plus(Duration.ofDays(7)).plusSeconds(60))
                .reload()
                .see("This plan is too old. Connect before you go on.")
                .see("555-0121");
        assertThat(phone.text()).doesNotContain("Bridge");
        phone.accessible("a plan too old").picture(PICTURES.resolve("old.png"));
    }

    @Test
    void ticksWaitForTheOneWhoMadeThemAndGoOutFromAnyPage() {
        open();
        phone.offline(true);
        say("Bridge", "Done");
        endAllSessions();
        phone.offline(false);
        Tour.signIn(phone, Tour.Person.VIEW_ONLY.mail);
        phone.open("/my/" + juno + "/today").see("Four to do today.");
        phone.waitFor("the former plan to go", () -> Long.valueOf(0).equals(phone.run(PLANS)));
        assertThat(waiting()).isEqualTo(1);
        assertThat(entries()).isEmpty();
        phone.open("/sign-out").see("Sign in");
        Tour.signIn(phone, Tour.Person.PARENT.mail);
        phone.open("/my/" + juno + "/today").see("One done, three to go.");
        phone.waitFor("the answer", () -> waiting() == 0);
        assertThat(entry("bridge", THURSDAY).by()).isEqualTo("Dana Albrecht");

        open();
        assertThat(phone.run(PLANS)).isEqualTo(1L);
        phone.open("/my/" + juno + "/today").press("Juno").press("Sign out").see("Sign in");
        assertThat(phone.run(PLANS)).isEqualTo(0L);
        phone.waitFor("the pictures to go", () -> kept("hearthway-session-pictures") == 0);
    }

    @Test
    void eachPageOfItIsFitForAPhoneAndForEverybody() {
        for (var person : List.of(Tour.Person.PARENT, Tour.Person.PARENT_OF_TWO)) {
            var child = new Tour(clinic).child(person.child);
            Tour.signIn(phone.forget(), person.mail);
            phone.open("/session/" + child);
            phone.waitFor("the plan", () -> !phone.all(".hw-page h1").isEmpty());
            for (var page : List.of("", THURSDAY + "/1", THURSDAY + "/1/went", THURSDAY + "/call", THURSDAY + "/end")) {
                phone.run("location.hash = arguments[0]", page);
                for (var width : List.of(390, 320, 1280)) {
                    phone.resize(width, width == 1280 ? 800 : 844, width < 1000);
                    phone.fitsItsWidth(page + " at " + width);
                }
                phone.resize(390, 844, true);
                phone.accessible(person.child + " " + page);
            }
            phone.run("location.hash = arguments[0]", THURSDAY + "/1");
            phone.pressAt(".hw-stopper").accessible("when to stop");
            phone.pressKeys(org.openqa.selenium.Keys.ESCAPE);
            assertThat(phone.all("dialog[open]")).isEmpty();
        }
    }

    @Test
    void countsAndHoldsWithRestsAndIsSilentUntilAsked() {
        open();
        phone.press("Straight-leg raise").see("Tap the ring each time.");
        phone.run("window.buzzed = []; navigator.vibrate = how => window.buzzed.push(how) > 0");
        for (int i = 0; i < 8; i++) {
            phone.pressAt(".hw-count");
        }
        phone.see("Rest").see("Skip the rest");
        assertThat(phone.run("return window.buzzed.length")).isEqualTo(0L);
        phone.press("Skip the rest").see("Round 2 of 2").press("Buzz");
        for (int i = 0; i < 8; i++) {
            phone.pressAt(".hw-count");
        }
        assertThat(phone.run("return window.buzzed.length")).isEqualTo(2L);
    }

    @Test
    void aSchoolAideDoesItToo() {
        var bram = new Tour(clinic).child("Bram");
        Tour.signIn(phone, Tour.Person.HELPER.mail);
        phone.open("/session/" + bram);
        phone.waitFor("the plan", () -> !phone.all(".hw-page h1").isEmpty());
        phone.press("Begin").press("How did it go?").see("Did it hurt?");
        assertThat(phone.all("textarea")).isEmpty();
        phone.press("Save and go on").seeNoMore("Did it hurt?");
        phone.waitFor("the tick to go", () -> waiting() == 0);
        assertThat(clinic.part(HomeWeek.class).entries(FAMILY, bram, THURSDAY, THURSDAY))
                .extracting(Logged::by)
                .contains("Odile Farrow");
    }
}
