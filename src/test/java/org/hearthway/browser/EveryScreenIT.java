package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.Set;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds on every screen for every role: nothing that axe-core finds, nothing that scrolls sideways. */
@ResourceLock(RunningClinic.SHARED)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Order(WalkOrder.LONGEST_SHARED)
class EveryScreenIT {

    private static final String[] NOT_HERE = {"This page is not here for you.", "Esta página no está disponible."};

    private final Set<String> colored = new HashSet<>();
    private final Set<String> looked = new HashSet<>();
    private final Set<Tour.Person> frames = new HashSet<>();
    private RunningClinic clinic;
    private Browser browser;

    @BeforeAll
    void begin() {
        clinic = RunningClinic.shared();
        browser = Browser.phone(clinic);
    }

    @AfterAll
    void end() {
        browser.close();
    }

    @ParameterizedTest
    @EnumSource
    void isAccessibleAndFitsAndTellsPlainlyWhatIsForOthers(Tour.Person person) {
        Tour.signIn(browser.forget(), person.mail);
        var soft = new SoftAssertions();
        new Tour(clinic)
                .places(person)
                .forEach((name, place) -> soft.assertThatCode(() -> {
                            browser.resize(person.isFamily() ? 390 : 1280, 844, person.isFamily());
                            // the same screen of the same child has its colors for whoever sees it
                            browser.go(place);
                            // the frame differs with the person, what is in it often not
                            var framed = frames.add(person);
                            if (looked.add(browser.fingerprint()) || framed) {
                                browser.accessible(name, colored.add(name + " of " + person.child));
                            }
                            // the narrowest phone of a family; a nurse has a common one
                            browser.resize(person.isFamily() ? 320 : 390, 640, person.isFamily());
                            browser.fitsItsWidth(name);
                            if (person == Tour.Person.NURSE) {
                                browser.accessible(name + " on a phone", false);
                            }
                        })
                        .as(person + " at " + place)
                        .doesNotThrowAnyException());
        if (person.isFirstOfTheRole()) {
            others(person, soft);
        }
        soft.assertAll();
    }

    private void others(Tour.Person person, SoftAssertions soft) {
        new Tour(clinic).placesOfOthers(person).values().forEach(place -> {
            browser.go(place);
            soft.assertThat(browser.text()).as(person + " at " + place).containsAnyOf(NOT_HERE);
        });
        soft.assertThatCode(
                        () -> browser.accessible("what is not for " + person, colored.add("what is not for others")))
                .doesNotThrowAnyException();
    }

    @Test
    void answersStrangersAsIfItDidNotExist() {
        // AC7: signed out, no screen tells anything but how to sign in and when to call
        browser.forget();
        var open = new ArrayList<String>();
        for (var place : new Tour(clinic).everyPlace()) {
            browser.open(place);
            if (!browser.path().equals("/sign-in")) {
                open.add(place + " led to " + browser.path());
            }
        }
        assertThat(open).isEmpty();
    }

    @Test
    void opensPlainPagesToEverybody() {
        browser.forget();
        var soft = new SoftAssertions();
        new PlainPages(clinic)
                .places()
                .forEach((name, place) -> soft.assertThatCode(() -> {
                            browser.resize(1280, 800, false);
                            browser.open(place).accessible(name);
                            browser.resize(390, 844, false);
                            browser.accessible(name + " on a phone", false);
                            browser.resize(320, 640, false);
                            browser.fitsItsWidth(name);
                        })
                        .as(place)
                        .doesNotThrowAnyException());
        soft.assertAll();
    }
}
