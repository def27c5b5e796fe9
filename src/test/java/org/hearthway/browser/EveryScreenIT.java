package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds on every screen for every role: nothing that axe-core finds, nothing that scrolls sideways. */
@Tag("screens")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryScreenIT {

    private RunningClinic clinic;
    private Browser browser;

    @BeforeAll
    void begin() {
        clinic = RunningClinic.demo();
        browser = Browser.phone(clinic);
    }

    @AfterAll
    void end() {
        browser.close();
        clinic.close();
    }

    @ParameterizedTest
    @EnumSource
    void isAccessibleAndFits(Tour.Person person) {
        Tour.signIn(browser.forget(), person.mail);
        var soft = new SoftAssertions();
        new Tour(clinic)
                .places(person)
                .forEach((name, place) -> soft.assertThatCode(() -> {
                            browser.resize(person.isFamily() ? 390 : 1280, 844, person.isFamily());
                            browser.open(place).accessible(name);
                            if (person.isFamily()) {
                                browser.resize(320, 640, true);
                                browser.open(place).fitsItsWidth(name);
                            }
                        })
                        .as(person + " at " + place)
                        .doesNotThrowAnyException());
        soft.assertAll();
    }

    @ParameterizedTest
    @EnumSource
    void answersStrangersAsIfItDidNotExist(Tour.Person person) {
        // AC7: signed out, no screen tells anything but how to sign in and when to call
        browser.forget();
        var open = new ArrayList<String>();
        new Tour(clinic).places(person).forEach((name, place) -> {
            browser.open(place);
            if (!browser.path().equals("/sign-in")) {
                open.add(place + " led to " + browser.path());
            }
        });
        assertThat(open).isEmpty();
    }
}
