package org.hearthway.browser;

import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Writes a picture of every screen for every role under {@code target/screens}: {@code mvn -Pscreens verify}. */
@Tag("screens")
class ScreensIT {

    private static final Path FOLDER = Path.of("target", "screens");

    @Test
    void areDrawn() {
        try (var clinic = RunningClinic.demo();
                var browser = Browser.phone(clinic)) {
            draw(browser, "nobody-sign-in", "/sign-in");
            draw(browser, "nobody-call", "/call");
            var tour = new Tour(clinic);
            for (var person : Tour.Person.values()) {
                Tour.signIn(browser.forget(), person.mail);
                var role = person.name().toLowerCase(Locale.ROOT).replace('_', '-');
                tour.places(person).forEach((name, place) -> draw(browser, role + "-" + name, place));
            }
        }
    }

    private static void draw(Browser browser, String name, String place) {
        browser.resize(390, 844, true);
        browser.open(place).picture(FOLDER.resolve(name + "-390.png"));
        browser.resize(1280, 800, false);
        browser.open(place).picture(FOLDER.resolve(name + "-1280.png"));
    }
}
