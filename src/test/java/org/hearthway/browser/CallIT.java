package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.content.FamilyText;
import org.hearthway.content.SignOff;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** A tired parent at night: no sign-in, perhaps no network. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CallIT {

    private static final java.util.Set<String> PARTS = java.util.Set.of("/offline/call.js", "/offline/aloud.js");

    private RunningClinic clinic;
    private Browser phone;

    @BeforeAll
    void begin() {
        clinic = RunningClinic.real();
        var administrator = People.with(Role.ADMINISTRATOR);
        var signOff = clinic.part(SignOff.class);
        signOff.accept(
                administrator,
                signOff.all(administrator).stream()
                        .map(FamilyText::item)
                        .filter(item -> item.kind().equals("signs"))
                        .toList());
        phone = Browser.phone(clinic);
    }

    @AfterAll
    void end() {
        phone.close();
        clinic.close();
    }

    @BeforeEach
    void withNetwork() {
        phone.offline(false);
        phone.resize(390, 844, true);
        clinic.clock().set(HearthwayTest.START);
    }

    private void seeTheNumbers() {
        phone.see("555-0100").see("555-0121").see("555-0134");
        assertThat(phone.all(".hw-calls a").stream().map(row -> row.getDomAttribute("href")))
                .containsExactly("tel:5550100", "tel:5550121", "tel:5550134");
    }

    private void waitUntilKept() {
        phone.waitFor(
                "the worker", () -> Boolean.TRUE.equals(phone.run("return !!navigator.serviceWorker.controller")));
    }

    @Test
    void opensSignedOutWithTheNumbersFirstAndNothingToFindFaultWith() {
        for (var language : Language.values()) {
            for (var size : List.of(List.of(390, 844), List.of(320, 640), List.of(1280, 800))) {
                phone.resize(size.get(0), size.get(1), size.get(0) < 1000);
                phone.open("/call?lang=" + language.tag());
                seeTheNumbers();
                var name = "call-" + language.tag() + "-" + size.get(0);
                phone.fitsItsWidth(name).accessible(name);
                phone.picture(Path.of("target", "screens", name + ".png"));
            }
            assertThat(phone.run("return document.documentElement.lang")).isEqualTo(language.tag());
        }
    }

    @Test
    void keepsTheThreeRowsOnTheFirstScreenOfAPhone() {
        phone.open("/call?lang=en");
        assertThat(((Number) phone.run("return document.querySelector('.hw-calls').getBoundingClientRect().bottom"))
                        .intValue())
                .isLessThan(844 - 70);
    }

    @Test
    void opensWithoutNetworkInBothLanguagesAfterOneVisit() {
        phone.open("/call?lang=en");
        waitUntilKept();
        phone.offline(true);

        phone.open("/call?lang=es").see("Cuándo llamar").see("La bomba hace un sonido");
        seeTheNumbers();
        phone.see("se guardó en su teléfono");
        assertThat(phone.all("[data-office]"))
                .allSatisfy(line -> assertThat(line.getText()).isNotBlank());
        phone.open("/call?lang=en").see("The pump makes a sound");
        seeTheNumbers();
        phone.open("/call").see("555-0121").reload();
        seeTheNumbers();
        // the look came along: tokens, fonts and icons
        assertThat(phone.run("return getComputedStyle(document.querySelector('.hw-calls .now')).backgroundColor"))
                .isEqualTo("rgb(155, 29, 59)");
        assertThat(phone.run("return document.fonts.check('600 20px Fraunces')"))
                .isEqualTo(true);
        phone.picture(Path.of("target", "screens", "call-offline.png"));
    }

    @Test
    void keepsNothingButTheCallPage() {
        phone.open("/call?lang=en");
        waitUntilKept();
        var kept = String.valueOf(phone.run("""
                const done = [];
                return caches.keys().then(async names => {
                  for (const name of names) for (const r of await (await caches.open(name)).keys())
                    done.push(new URL(r.url).pathname);
                  return [...new Set(done)].sort().join(' ');
                });"""));
        assertThat(kept.split(" "))
                .allMatch(path -> path.equals("/call") || path.startsWith("/look/") || PARTS.contains(path))
                .contains("/look/fonts/fraunces-latin-soft-normal.woff2", "/look/icons.svg", "/look/tokens.css");
        assertThat(phone.run("return fetch('/sign-in').then(a => a.ok)")).isEqualTo(true);
        phone.offline(true);
        assertThat(phone.run("return fetch('/sign-in').then(a => a.ok, () => 'nothing')"))
                .isEqualTo("nothing");
    }

    @Test
    void showsTheSignsOfOneTopicAndThoseOfEveryChild() {
        phone.open("/call?lang=en").see("The legs are weaker");
        phone.press("Pump");
        phone.see("The pump makes a sound").see("hard to wake").seeNoMore("The legs are weaker");
        // next time the same family sees its own signs at once
        phone.reload().see("The pump makes a sound").seeNoMore("The legs are weaker");
        phone.press("All signs").see("The legs are weaker");
    }

    @Test
    void saysAtNightWhenTheOfficeOpensAndWhatToDoIfItGetsWorse() {
        // 02:00 in New York on a Saturday
        clinic.clock().set(Instant.parse("2026-03-14T06:00:00Z"));
        phone.open("/call?lang=en");
        var told = String.valueOf(phone.run("return fetch('/call?lang=en').then(a => a.text())"));
        assertThat(told)
                .contains("The office is closed now. It opens Monday, March 16 at 8:00 AM."
                        + " If it gets worse, call the urgent line: 555-0121.");
    }
}
