package org.hearthway.visit.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.hearthway.content.ContentReading;
import org.hearthway.words.Words;
import org.junit.jupiter.api.Test;

class VisitKindsTests {

    private final VisitKinds kinds = new VisitKinds(new Words());

    @Test
    void namesTheLineOfEveryMistakeAtOnce() {
        assertThat(ContentReading.text(kinds, "visits/chat.yaml", """
                source: common practice, no source
                version: 1
                reviewed: {en: none, es: none}
                name: {en: Chat}
                minutes: 3
                with: {en: a nurse, es: enfermería}
                bring: []
                weekdays: [monday, someday]
                """))
                .containsExactlyInAnyOrder(
                        "content/visits/chat.yaml:4: \"es\" is missing, expected a text",
                        "content/visits/chat.yaml:5: \"minutes\" is 3, expected a whole number from 5 to 480",
                        "content/visits/chat.yaml:8: \"weekdays\" is someday, expected one of monday, tuesday,"
                                + " wednesday, thursday, friday, saturday, sunday");
    }
}
