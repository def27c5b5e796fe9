package org.hearthway.sign.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.dom.Element;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.hearthway.base.AccountId;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.content.Provenance;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.sign.Signs.Read;
import org.hearthway.sign.Signs.Report;
import org.hearthway.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ReportCardTests {

    private static final SignWords WORDS = new SignWords(new Words(), Language.EN, ZoneId.of("America/New_York"));
    private static final Instant NOON = Instant.parse("2026-03-12T16:00:00Z");
    private static final Sign BEEP = new Sign(
            "pump-beep",
            Sign.Topic.PUMP,
            Urgency.URGENT,
            new Bilingual("The pump beeps.", "La bomba suena."),
            new Provenance("a test", 1, Optional.empty(), Optional.empty()));

    private static Report report(String note, String by, Optional<Read> read, Sign... signs) {
        return new Report(
                UUID.randomUUID(),
                ChildId.random(),
                List.of(signs),
                Stream.of(signs).map(Sign::urgency).findFirst(),
                false,
                note,
                by,
                NOON,
                read);
    }

    private static List<Element> all(Element element) {
        var found = new ArrayList<>(List.of(element));
        element.getChildren().forEach(child -> found.addAll(all(child)));
        return found;
    }

    @ParameterizedTest
    @MethodSource("org.hearthway.testing.HostileStrings#all")
    void showsWhatAFamilyWroteAsTextAndNothingElse(String hostile) {
        var card = new ReportCard(WORDS, report(hostile, hostile, Optional.empty()), Optional.empty());
        assertThat(all(card.getElement()).stream().filter(Element::isTextNode).map(Element::getText))
                .contains(hostile);
        assertThat(all(card.getElement()).stream().filter(element -> !element.isTextNode()))
                .allSatisfy(element -> assertThat(String.valueOf(element.getProperty("innerHTML")))
                        .doesNotContain(hostile));
    }

    @Test
    void saysHowUrgentByWhomAndThatNobodyCalled() {
        var card = new ReportCard(WORDS, report("", "Iris Halloway", Optional.empty(), BEEP), Optional.of(key -> {}));
        assertThat(card.getElement().getTextRecursively())
                .contains("Today, do not wait", "The pump beeps.", "Iris Halloway, Thu, Mar 12, 12:00 PM")
                .contains("says: did not call", "Mark as read");
        assertThat(card.getClassNames()).contains("urgent", "open");
    }

    @Test
    void saysWhoReadItAndAsksNoMore() {
        var read = new Read(AccountId.random(), "Ada Okoro", NOON.plusSeconds(600));
        var card = new ReportCard(WORDS, report("hello", "Iris Halloway", Optional.of(read)), Optional.of(key -> {}));
        assertThat(card.getElement().getTextRecursively())
                .contains("Note to the team", "Read by Ada Okoro, Thu, Mar 12, 12:10 PM")
                .doesNotContain("Mark as read");
    }
}
