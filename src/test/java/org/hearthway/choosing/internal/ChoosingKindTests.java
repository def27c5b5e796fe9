package org.hearthway.choosing.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.Bilingual;
import org.hearthway.choosing.engine.Condition;
import org.hearthway.choosing.engine.Criterion;
import org.hearthway.choosing.engine.Guide;
import org.hearthway.choosing.engine.Mark;
import org.hearthway.content.ContentReading;
import org.hearthway.content.FamilyText;
import org.hearthway.words.ReadingLevel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The shipped facts and guides keep the rules, and what breaks them is named with file and line. */
class ChoosingKindTests {

    private static Stream<FamilyText> texts() {
        return Shipped.content().familyTexts().stream();
    }

    /** Six figures of what is wrong, the shipped facts with them. */
    private static List<String> mistakes(String from, String to) throws IOException {
        var kind = new ChoosingKind();
        var facts = Files.readString(Path.of("content/choosing/facts.yaml"));
        assertThat(ContentReading.text(kind, "choosing/facts.yaml", facts)).isEmpty();
        var guide = Files.readString(Path.of("content/choosing/dbs.yaml"));
        assertThat(guide).contains(from);
        return ContentReading.text(kind, "choosing/dbs.yaml", guide.replace(from, to));
    }

    @Test
    void aFactThatDoesNotExistIsNamedWithFileAndLine() throws IOException {
        assertThat(mistakes("{fact: cause, is: [genetic]}", "{fact: caus, is: [genetic]}"))
                .singleElement()
                .asString()
                .matches("(content/)?choosing/dbs\\.yaml:\\d+: there is no fact \"caus\", expected one of .*");
    }

    @Test
    void aChoiceThatDoesNotExistIsNamedWithFileAndLine() throws IOException {
        assertThat(mistakes("{fact: cause, is: [genetic]}", "{fact: cause, is: [genetik]}"))
                .singleElement()
                .asString()
                .matches(
                        "(content/)?choosing/dbs\\.yaml:\\d+: \"cause\" has no choice \"genetik\", expected one of .*");
    }

    @Test
    void anAgeThatSpeaksAgainstAPathIsRefused() throws IOException {
        assertThat(mistakes(
                        "{when: {age: {to: 6}}, means: talk, says: {en: \"Usual from",
                        "{when: {age: {to: 6}}, means: against, says: {en: \"Usual from"))
                .singleElement()
                .asString()
                .contains("age or level speaks against a path", "age and level advise only");
    }

    @Test
    void aLevelThatSpeaksAgainstAPathIsRefusedHoweverDeepItStands() throws IOException {
        assertThat(mistakes(
                        "{when: {fact: bleeding, is: [tendency]}, means: against",
                        "{when: {any: [{fact: bleeding, is: [tendency]}, {not: {fact: gmfcs, is: [\"1\"]}}]},"
                                + " means: against"))
                .singleElement()
                .asString()
                .contains("age or level speaks against a path");
    }

    @Test
    void aConditionThatSaysTwoThingsOrNothingIsRefused() throws IOException {
        assertThat(mistakes("{fact: cause, is: [genetic]}", "{fact: cause, is: [genetic], age: {from: 3}}"))
                .anyMatch(line -> line.contains("several conditions stand here"));
        assertThat(mistakes("when: {fact: cause, is: [genetic]}", "when: {age: {from: 9, to: 3}}"))
                .anyMatch(line -> line.contains("\"to\" lies before \"from\""));
        assertThat(mistakes("when: {fact: cause, is: [genetic]}", "when: {any: [{age: {from: 3}}]}"))
                .anyMatch(line -> line.contains("less than two conditions"));
    }

    @Test
    void aTextWithoutItsSpanishAndACriterionWithoutASourceAreRefused() throws IOException {
        assertThat(mistakes("{en: \"Normal imaging.\", es: \"Imágenes normales.\"}", "{en: \"Normal imaging.\"}"))
                .singleElement()
                .asString()
                .contains("\"es\" is missing");
        assertThat(mistakes(
                        "  - id: room\n    source: Kaminska et al., Eur J Paediatr Neurol 2017\n", "  - id: room\n"))
                .singleElement()
                .asString()
                .contains("\"source\" is missing");
    }

    @Test
    void twoPathsAtOnePlaceAreRefused() throws IOException {
        var kind = new ChoosingKind();
        var facts = Files.readString(Path.of("content/choosing/facts.yaml"));
        ContentReading.text(kind, "choosing/facts.yaml", facts);
        var guide = Files.readString(Path.of("content/choosing/dbs.yaml"));
        assertThat(ContentReading.text(kind, "choosing/dbs.yaml", guide)).isEmpty();
        assertThat(ContentReading.text(kind, "choosing/other.yaml", guide))
                .anyMatch(line -> line.contains("another path stands at 3"));
    }

    @Test
    void theFivePathsStandInTheirPlaces() {
        assertThat(Shipped.content().guides())
                .extracting(read -> read.guide().id())
                .containsExactly("sdr", "itb", "dbs", "rehab", "followup");
    }

    /** A line that says nothing about a child would be no criterion; every fact bears on at least one path. */
    @Test
    void everyFactBearsOnAPath() {
        var content = Shipped.content();
        var read = content.guides().stream()
                .flatMap(each -> each.guide().criteria().stream())
                .flatMap(criterion -> criterion.cases().stream())
                .map(Criterion.Case::when)
                .map(Condition::facts)
                .flatMap(java.util.Set::stream)
                .collect(Collectors.toSet());
        assertThat(read).containsExactlyInAnyOrderElementsOf(content.facts().keySet());
    }

    /** No figure in a line could be taken for a count, a rank or a share. */
    @Test
    void noLineCountsOrRanks() {
        Shipped.content()
                .guides()
                .forEach(read -> read.guide().criteria().stream()
                        .flatMap(criterion -> criterion.cases().stream())
                        .flatMap(each -> Stream.of(each.says().en(), each.says().es()))
                        .forEach(says -> assertThat(says)
                                .doesNotContainPattern("%|percent|por ciento|score|puntos|points|best path")));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void aFamilyTextIsPlainInBothLanguages(FamilyText text) {
        text.pieces().forEach(piece -> {
            assertThat(piece.en().length()).as(piece.en()).isLessThanOrEqualTo(200);
            assertThat(piece.es().length()).as(piece.es()).isLessThanOrEqualTo(200);
            var english = ReadingLevel.english(piece.en());
            if (english.words() >= 10) {
                assertThat(english.fleschKincaidGrade()).as(piece.en()).isLessThanOrEqualTo(6.9);
            }
            var spanish = ReadingLevel.spanish(piece.es());
            if (spanish.words() >= 10) {
                assertThat(spanish.fernandezHuertaEase()).as(piece.es()).isGreaterThanOrEqualTo(70);
            }
        });
        if (!text.item().id().equals("facts")) {
            var whole = text.pieces().subList(1, text.pieces().size());
            assertThat(ReadingLevel.english(joined(whole, true)).fleschKincaidGrade())
                    .isLessThanOrEqualTo(6.0);
            assertThat(ReadingLevel.spanish(joined(whole, false)).fernandezHuertaEase())
                    .isGreaterThanOrEqualTo(75);
        }
    }

    private static String joined(List<Bilingual> pieces, boolean english) {
        return pieces.stream().map(piece -> english ? piece.en() : piece.es()).collect(Collectors.joining(" "));
    }

    @Test
    void ownWordsTakeTheirPlaceAndNoOther() {
        var guide = Shipped.guide(Shipped.content(), "itb");
        var pieces = GuidePieces.of(guide);
        for (var place = 0; place < pieces.size(); place++) {
            var own = GuidePieces.of(GuidePieces.with(guide, java.util.Map.of(place, Bilingual.same("Our words"))));
            for (var other = 0; other < pieces.size(); other++) {
                assertThat(own.get(other)).isEqualTo(other == place ? Bilingual.same("Our words") : pieces.get(other));
            }
        }
        assertThat(GuidePieces.with(guide, java.util.Map.of())).isEqualTo(guide);
    }

    @Test
    void marksNeverStandInAnotherOrderThanTheirOwn() {
        Shipped.content().guides().stream().map(ChoosingKind.Read::guide).forEach(ChoosingKindTests::ordered);
    }

    private static void ordered(Guide guide) {
        var marks = guide.read(new org.hearthway.choosing.engine.Known(java.util.Map.of(), 5)).stream()
                .map(line -> line.mark())
                .toList();
        assertThat(marks).isSortedAccordingTo(java.util.Comparator.comparingInt(List.of(Mark.values())::indexOf));
    }
}
