package org.hearthway.visit.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.hearthway.content.ContentReading;
import org.hearthway.visit.VisitKind;
import org.hearthway.words.Words;
import org.junit.jupiter.api.Test;

class VisitKindsTests {

    private final VisitKinds kinds = new VisitKinds(new Words());

    @Test
    void readsTheShippedKindsWithoutAMistake() {
        assertThat(ContentReading.shipped(kinds)).isEmpty();
        assertThat(kinds.all())
                .extracting(VisitKind::id)
                .contains("refill", "operation", "therapy", "review", "six-week-check", "team-meeting");
        assertThat(kinds.find("refill").orElseThrow().critical()).isTrue();
        assertThat(kinds.find("therapy").orElseThrow().critical()).isFalse();
    }

    @Test
    void namesTheLineOfAMissingSpanishText() {
        var lines = ContentReading.text(kinds, "visits/talk.yaml", """
                name: {en: Talk}
                minutes: 4
                with: {en: a nurse, es: enfermería}
                source: common practice, no source
                version: 1
                reviewed: {en: none, es: none}
                """);
        assertThat(lines)
                .containsExactly(
                        "content/visits/talk.yaml:1: \"es\" is missing, expected a text",
                        "content/visits/talk.yaml:2: \"minutes\" is 4, expected a whole number from 5 to 480");
    }

    @Test
    void keepsAVisitReadableWhoseKindTheContentDropped() {
        assertThat(kinds.ofBooked("gone", 30).name().en()).isEqualTo("Visit");
    }
}
