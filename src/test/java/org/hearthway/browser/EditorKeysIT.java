package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.openqa.selenium.Keys;

/** A program changed without a mouse: how many keys the usual change takes, and where the keys are after each step. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EditorKeysIT {

    /** Seconds of a key stroke of an average typist who is no secretary (Card, Moran and Newell 1980). */
    private static final double KEY = 0.28;

    /** Seconds to make up one's mind before a step (the same). */
    private static final double MIND = 1.35;

    private static final double MINUTE = 60;

    private RunningClinic clinic;
    private Browser desk;
    private int keys;
    private int minds;

    @BeforeAll
    void begin() {
        clinic = RunningClinic.demo();
        desk = Browser.desk(clinic);
    }

    @AfterAll
    void end() {
        desk.close();
        clinic.close();
    }

    /** A step that a person thinks about once, and then does by these keys. */
    private EditorKeysIT step(CharSequence... pressed) {
        minds++;
        for (var key : pressed) {
            keys++;
            desk.pressKeys(key);
        }
        return this;
    }

    private String held() {
        return String.valueOf(desk.run("""
                const at = document.activeElement;
                const row = at.closest('[data-row]');
                return (row ? row.dataset.row : '') + ' ' + (at === row ? 'row' : at.getAttribute('aria-label') || at.id);"""));
    }

    private void holds(String what) {
        desk.waitFor("the keys at " + what + ", which are at " + held(), () -> held().contains(what));
    }

    @Test
    void theUsualChangeTakesLessThanAMinuteByKeysAlone() {
        var bram = new Tour(clinic).child("Bram");
        Tour.signIn(desk, Tour.Person.THERAPIST.mail).open("/staff/child/" + bram + "/program");
        keys = 0;
        minds = 0;

        step("j", "j");
        holds("line-1 row");
        step(Keys.ENTER, Keys.TAB);
        holds("Times of Step up");
        step(Keys.ARROW_DOWN, Keys.ARROW_DOWN, Keys.ESCAPE);
        desk.see("1 change");
        holds("line-1 row");
        step("j");
        holds("line-2 row");
        step("e");
        // one exercise is gone, another is there
        desk.see("3 changes");
        holds("line-2 row");
        step("n");
        desk.pressKeys("Fewer steps, and a chair to stand up from. Well done!");
        // control and Enter are two keys pressed together
        keys++;
        step(Keys.chord(Keys.CONTROL, Keys.ENTER));
        desk.see("Version 3 is saved. The family sees it.");

        var seconds = keys * KEY + minds * MIND;
        assertThat(keys).as("keys besides the note").isLessThanOrEqualTo(14);
        assertThat(seconds).as(keys + " keys and " + minds + " steps").isLessThan(MINUTE / 2);

        desk.see("Fewer steps, and a chair to stand up from.");
        desk.open("/staff/child/" + bram + "/program");
        assertThat(desk.value("Times of Step up")).isEqualTo("6");
        try (var phone = Browser.phone(clinic)) {
            Tour.signIn(phone, Tour.Person.TWO_HOMES.mail).open("/my/" + bram + "/week");
            phone.see("A word from your team:").see("“Fewer steps, and a chair to stand up from. Well done!”");
            phone.picture(Path.of("target", "screens", "program-word.png"));
        }
    }

    @Test
    void theKeysAreNeverLost() {
        var juno = new Tour(clinic).child("Juno");
        Tour.signIn(desk.forget(), Tour.Person.THERAPIST.mail).open("/staff/child/" + juno + "/program");
        step("j");
        holds("line-0 row");
        step("d");
        desk.see("moved");
        holds("line-1 row");
        step("x");
        desk.seeNoMore("Count aloud with Juno at the top.");
        holds("line-1 row");
        step("z");
        holds("line-1 row");
        step("a");
        holds("Add an exercise");
        desk.pressKeys("half");
        desk.see("Half-kneel");
        desk.pressKeys(Keys.ENTER);
        holds("line-5 row");
        step("m");
        desk.see("Rest and load");
        holds("line-5 row");
        desk.accessible("a line with all its fields").picture(Path.of("target", "screens", "program-line.png"));
        // by Tab and Enter, as by a machine that reads the page aloud, the keys stay on the control
        desk.run("document.querySelector('[data-row=line-5] [data-key=u]').focus()");
        desk.pressKeys(Keys.ENTER);
        holds("line-4 Move Half");
        desk.pressKeys(Keys.ENTER);
        holds("line-3 Move Half");
    }

    @Test
    void keysOfOneLetterCanBeSwitchedOff() {
        var juno = new Tour(clinic).child("Juno");
        Tour.signIn(desk.forget(), Tour.Person.THERAPIST.mail).open("/staff/child/" + juno + "/program");
        desk.run("document.querySelector('[data-keys-switch]').focus()");
        desk.pressKeys(Keys.ENTER);
        desk.run("document.activeElement.blur()");
        desk.pressKeys("j");
        assertThat(held()).doesNotContain("line-0");
        desk.run("document.querySelector('[data-keys-switch]').focus()");
        desk.pressKeys(Keys.ENTER);
        desk.run("document.activeElement.blur()");
        desk.pressKeys("j");
        holds("line-0 row");
    }
}
