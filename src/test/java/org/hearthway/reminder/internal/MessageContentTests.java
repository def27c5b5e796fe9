package org.hearthway.reminder.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hearthway.content.ContentReading;
import org.hearthway.reminder.engine.Step;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MessageContentTests {

    private final BannedWords banned = new BannedWords();
    private final MessageTexts texts = new MessageTexts(banned);
    private final RuleBook rules = new RuleBook(texts);
    private final SendingRules sending = new SendingRules();

    @BeforeEach
    void readTheBannedWords() {
        assertThat(ContentReading.shipped(banned)).isEmpty();
    }

    private List<String> family(String english, String spanish) {
        return ContentReading.text(texts, "messages/texts/made-up.yaml", """
                to: family
                subject: {en: "Visit", es: "Cita"}
                body: {en: "%s", es: "%s"}
                """.formatted(english, spanish));
    }

    @Test
    void readsTheShippedTextsAndRulesWithoutAMistake() {
        assertThat(ContentReading.shipped(texts)).isEmpty();
        assertThat(ContentReading.shipped(rules)).isEmpty();
        assertThat(ContentReading.shipped(sending)).isEmpty();
        assertThat(rules.forVisits(false).orElseThrow().steps())
                .extracting(Step::name)
                .containsExactly("send-7", "send-1");
        assertThat(rules.forRefills())
                .singleElement()
                .satisfies(refill -> assertThat(refill.rule().steps())
                        .extracting(Step::name)
                        .containsExactlyInAnyOrder("send-14", "send-7", "send-3", "send-1", "call-7", "call-after1"));
    }

    /** What a message must not tell: drug, device, diagnosis, body part, procedure, telling clinic name (45 CFR 164.510). */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Your baclofen is due",
                "Time to refill",
                "About the pump",
                "the hip",
                "after surgery",
                "her spasticity",
                "x-ray day",
                "your neurology visit",
                "our movement clinic",
                "the dose",
                "Therapy at nine"
            })
    void stopsAtAWordThatTellsAboutTheChild(String telling) {
        assertThat(family(telling, "Hola")).singleElement().asString().contains("neutral words");
        assertThat(family("Hello", "Hola")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Relleno de la bomba", "la cadera", "su cirugía", "CIRUGIA", "parálisis", "la férula"})
    void stopsAtASpanishWordWithOrWithoutItsAccent(String telling) {
        assertThat(family("Hello", telling)).singleElement().asString().contains("neutral words");
    }

    @Test
    void readsTheSubjectAsStrictlyAsTheBody() {
        var lines = ContentReading.text(texts, "messages/texts/made-up.yaml", """
                to: family
                subject: {en: "Pump visit", es: "Cita"}
                body: {en: "Hello", es: "Hola"}
                """);
        assertThat(lines).singleElement().asString().startsWith("content/messages/texts/made-up.yaml:2: \"subject\"");
    }

    @Test
    void letsStaffReadPlainWords() {
        var lines = ContentReading.text(texts, "messages/texts/made-up.yaml", """
                to: staff
                subject: {en: "Refill", es: "Relleno"}
                body: {en: "Book the pump refill", es: "Fije el relleno de la bomba"}
                """);
        assertThat(lines).isEmpty();
    }

    @Test
    void refusesAGapThatNobodyFills() {
        assertThat(family("Dear {name}", "Hola"))
                .containsExactly("content/messages/texts/made-up.yaml:3: \"body\" has the gap {name}, expected one of"
                        + " {day}, {link}, {office}, {time}");
    }

    @Test
    void refusesARuleThatNamesATextThatIsNotThere() {
        var lines = ContentReading.text(rules, "messages/rules/made-up.yaml", """
                about: visit
                critical: no
                too-late: nowhere
                steps:
                  - days-before: 1
                    send: {open: nothing}
                """);
        assertThat(lines)
                .containsExactly(
                        "content/messages/rules/made-up.yaml:3: \"too-late\" is nowhere, expected the name of a file in"
                                + " messages/texts",
                        "content/messages/rules/made-up.yaml:6: \"open\" is nothing, expected the name of a file in"
                                + " messages/texts");
    }

    @Test
    void refusesHoursThatEndBeforeTheyBegin() {
        var lines = ContentReading.text(sending, "messages/sending.yaml", """
                earliest: "21:00"
                before: "08:00"
                hours-before-visit: 2
                useful-days: 2
                first-wait-seconds: 60
                longest-wait-seconds: 3600
                """);
        assertThat(lines)
                .containsExactly(
                        "content/messages/sending.yaml:2: \"before\" is not later than \"earliest\", expected a"
                                + " later time of the same day");
    }
}
