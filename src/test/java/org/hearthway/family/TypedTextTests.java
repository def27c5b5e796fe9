package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.base.Language.EN;
import static org.hearthway.family.Samples.reader;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.hearthway.base.Bilingual;
import org.hearthway.content.Provenance;
import org.hearthway.sign.Signs.Report;
import org.hearthway.testing.HostileStrings;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.VisitKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** IO3: what people typed stands on the pages as text, whatever it looks like. */
class TypedTextTests {

    static Stream<String> hostile() {
        return HostileStrings.all();
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void staysTextInANoteToTheTeam(String typed) {
        var reader = reader(EN);
        var report = new Report(
                UUID.randomUUID(),
                reader.id(),
                List.of(),
                Optional.empty(),
                false,
                typed,
                typed,
                reader.instant(),
                Optional.empty());
        staysText(new ReportList(reader, "title", List.of(report), List.of()), typed);
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void staysTextInTheWishToMoveAVisit(String typed) {
        var reader = reader(EN);
        var kind = new VisitKind(
                "therapy",
                Bilingual.same("Therapy"),
                45,
                Bilingual.same("a therapist"),
                List.of(),
                List.of(),
                false,
                java.util.Set.of(),
                new Provenance("common practice, no source", 1, Optional.empty(), Optional.empty()));
        var visit = new Visit(
                VisitId.random(),
                reader.id(),
                kind,
                reader.today().plusDays(3).atTime(14, 0),
                Samples.NEW_YORK,
                45,
                typed,
                Optional.empty(),
                Visit.Answer.ASKED_TO_MOVE,
                typed,
                Visit.State.BOOKED,
                0,
                1);
        staysText(new VisitCard(reader, visit, Optional.empty(), false, false, new Unused()), typed);
    }

    private static final class Unused implements VisitCard.Answers {
        @Override
        public void confirm(Visit visit) {}

        @Override
        public boolean askToMove(Visit visit, String wish) {
            return false;
        }
    }

    private static void staysText(Component component, String typed) {
        var elements = elements(component.getElement()).toList();
        if (!typed.isBlank()) {
            assertThat(elements).anyMatch(e -> e.isTextNode() && e.getText().contains(typed));
        }
        assertThat(elements)
                .filteredOn(e -> !e.isTextNode() && e.getProperty("innerHTML") != null)
                .allMatch(e -> e.getClassList().contains("hw-drawing"))
                .noneMatch(e -> !typed.isBlank()
                        && typed.length() > 3
                        && e.getProperty("innerHTML").contains(typed));
    }

    private static Stream<Element> elements(Element element) {
        return Stream.concat(Stream.of(element), element.getChildren().flatMap(TypedTextTests::elements));
    }
}
