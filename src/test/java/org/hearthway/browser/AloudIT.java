package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;

/** A page read aloud. The browser of the tests has no voice, so its speech is written down instead. */
@Order(WalkOrder.SHARED)
@ResourceLock(RunningClinic.SHARED)
class AloudIT {

    private static final String LISTEN = """
            window.heard = [];
            window.tongues = new Set();
            speechSynthesis.speak = (said) => { window.heard.push(said.text); window.tongues.add(said.lang); };
            """;

    private static RunningClinic clinic;

    @BeforeAll
    static void begin() {
        clinic = RunningClinic.shared();
    }

    private static String heard(Browser phone) {
        return String.valueOf(phone.run("return window.heard.join('\\n')"));
    }

    @Test
    void saysWhatStandsThereInTheLanguageOfThePageAndStops() {
        try (var phone = Browser.phone(clinic)) {
            Tour.signIn(phone, Tour.Person.PARENT.mail);
            var child = new Tour(clinic).child("Juno");
            phone.open("/my/" + child + "/today").see("Read it to me");
            phone.run(LISTEN);
            phone.press("Read it to me").see("Stop reading");
            assertThat(heard(phone)).contains("Next date").doesNotContain("Read it to me");
            assertThat(phone.run("return [...window.tongues].join()")).isEqualTo("en");
            phone.press("Stop reading").see("Read it to me");

            phone.open("/my/" + child + "/call").see("Read it to me");
            phone.run(LISTEN);
            phone.press("Read it to me");
            assertThat(heard(phone)).contains("Your child is hard to wake, or you cannot wake them.");
        }
    }

    @Test
    void worksSignedOutInSpanishAndWithoutANetwork() {
        try (var phone = Browser.phone(clinic)) {
            phone.open("/call?lang=es").see("Léamelo");
            phone.waitFor(
                    "the kept copy",
                    () -> Boolean.TRUE.equals(phone.run("return !!navigator.serviceWorker.controller")));
            phone.offline(true).reload().see("Léamelo");
            phone.run(LISTEN);
            phone.press("Léamelo").see("Parar la lectura");
            assertThat(heard(phone)).contains("Cuesta mucho despertar");
            assertThat(phone.run("return [...window.tongues].join()")).isEqualTo("es");
        }
    }

    @Test
    void staysAwayWhereNoVoiceSpeaksTheLanguage() {
        try (var phone = Browser.phone(clinic)) {
            phone.open("/call").see("Read it to me");
            phone.run("""
                    speechSynthesis.getVoices = () => [{ lang: 'de-DE', localService: true }];
                    speechSynthesis.dispatchEvent(new Event('voiceschanged'));
                    """);
            phone.seeNoMore("Read it to me");
        }
    }
}
