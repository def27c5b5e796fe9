package org.hearthway.browser;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hearthway.access.Accounts;
import org.hearthway.access.Links;
import org.hearthway.access.NewAccount;
import org.hearthway.base.AccountId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.program.HomeWeek;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Writes a picture of every screen for every role under {@code target/screens}: {@code mvn -Pscreens verify}. */
@Tag("screens")
class ScreensIT {

    private static final Path FOLDER = Path.of("target", "screens");
    private static final String PASSWORD = "seven quiet herons walk";
    private static final LocalDate TODAY = LocalDate.ofInstant(HearthwayTest.START, People.ZONE);

    @Test
    void areDrawn() {
        try (var clinic = RunningClinic.demo();
                var browser = Browser.phone(clinic)) {
            var tour = new Tour(clinic);
            for (var person : Tour.Person.values()) {
                Tour.signIn(browser.forget(), person.mail);
                draw(browser, name(person), tour.places(person));
            }
            states(browser, tour);
            stop(clinic, browser, tour);
            browser.forget();
            draw(browser, "nobody", new PlainPages(clinic).places());
        }
    }

    /** What stands on a screen only when it is asked for. */
    private static void states(Browser browser, Tour tour) {
        var program = "/staff/child/" + tour.child("Juno") + "/program";
        Tour.signIn(browser.forget(), Tour.Person.THERAPIST.mail);
        draw(browser, "therapist", Map.of("program-compared", program + "?compare=1-2"));
        Tour.signIn(browser.forget(), Tour.Person.COORDINATOR.mail);
        for (var list : new String[] {"waiting", "not-reached", "to-book"}) {
            draw(browser, "coordinator", Map.of("desk-" + list, "/staff/desk?show=" + list));
        }
    }

    /** A parent notes a pain of eight. */
    private static void stop(RunningClinic clinic, Browser browser, Tour tour) {
        var child = tour.child("Juno");
        var parent = clinic.part(Households.class).caregivers(People.with(Role.COORDINATOR), child).stream()
                .filter(caregiver -> caregiver.reach() == Households.Reach.FULL)
                .findFirst()
                .orElseThrow()
                .account();
        pain(clinic, parent, child);
        Tour.signIn(browser.forget(), Tour.Person.PARENT.mail);
        draw(browser, "parent", Map.of("stop", "/my/" + child + "/today"));
    }

    private static void pain(RunningClinic clinic, AccountId parent, org.hearthway.base.ChildId child) {
        var entry = new HomeWeek.Entry(
                UUID.randomUUID(),
                "bridge",
                TODAY,
                HomeWeek.Outcome.SOME,
                Optional.empty(),
                Optional.of(5),
                Optional.of(8),
                Optional.of(HomeWeek.RatedBy.CHILD),
                "");
        clinic.part(HomeWeek.class).log(People.as(parent, Role.CAREGIVER), child, entry);
    }

    @Test
    void areDrawnOfAClinicThatHasNothingYet() {
        try (var clinic = RunningClinic.real();
                var browser = Browser.phone(clinic)) {
            var first = clinic.part(Links.class)
                    .create(
                            Links.Purpose.FIRST_ADMINISTRATOR,
                            new UUID(0, 0),
                            clinic.clock().instant().plus(Duration.ofHours(1)));
            draw(
                    browser,
                    "empty",
                    Map.of("first", "/welcome/" + clinic.part(Links.class).token(first.id())));
            signIn(clinic, browser, "ada@clinic.example", Role.ADMINISTRATOR, Role.NURSE, Role.COORDINATOR);
            for (var place : new String[] {"needs", "children", "desk", "clinic", "clinic/children", "clinic/trail"}) {
                draw(browser, "empty", Map.of(place.replace('/', '-'), "/staff/" + place));
            }
            var child = Children.enter(clinic.part(ChildRegister.class));
            for (var place : new String[] {"path", "program", "pump", "signs"}) {
                draw(browser, "empty", Map.of("child-" + place, "/staff/child/" + child + "/" + place));
            }
            var parent = signIn(clinic, browser.forget(), "noa@family.example", Role.CAREGIVER);
            draw(browser, "empty", Map.of("no-child", "/"));
            clinic.part(Households.class).link(People.with(Role.ADMINISTRATOR), child, parent, Households.Reach.FULL);
            for (var place : new String[] {"today", "week", "path", "dates", "call", "notes"}) {
                draw(browser, "empty", Map.of("family-" + place, "/my/" + child + "/" + place));
            }
        }
    }

    private static AccountId signIn(RunningClinic clinic, Browser browser, String mail, Role first, Role... more) {
        var roles = new java.util.HashSet<>(Set.of(more));
        roles.add(first);
        var invitation = clinic.part(Accounts.class)
                .invite(
                        People.with(Role.ADMINISTRATOR),
                        new NewAccount("Ada Okoro", mail, "", roles, Language.EN, People.ZONE));
        browser.open(invitation.url()).type("New password", PASSWORD).press("Save my password");
        browser.type("Email", mail).type("Password", PASSWORD).press("Sign in");
        return invitation.account();
    }

    private static String name(Tour.Person person) {
        return person.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static void draw(Browser browser, String who, Map<String, String> places) {
        places.forEach((name, place) -> {
            browser.resize(390, 844, true);
            browser.open(place).picture(FOLDER.resolve(who + "-" + name + "-390.png"));
            browser.resize(1280, 800, false);
            browser.picture(FOLDER.resolve(who + "-" + name + "-1280.png"));
        });
    }
}
