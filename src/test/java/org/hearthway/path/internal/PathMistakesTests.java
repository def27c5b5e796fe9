package org.hearthway.path.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hearthway.content.ContentReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each mistake that can be made in a path, made alone and all together: each is told once, with its file and line. */
class PathMistakesTests {

    private static final String RIGHT = """
            source: common practice, no source
            version: 1
            reviewed: {en: none, es: none}
            name: {en: Small path, es: Camino pequeño}
            begins-at: second
            advice:
              - {id: age, ages: {from: 4, to: 9, on: second}, says: {en: Young, es: Joven}, source: here}
            stages:
              - id: first
                name: {en: First, es: Primera}
                says: {en: Says, es: Dice}
                who: nurse
                begins: [{earliest: P0D, usual: P0D, latest: P0D}]
                until: second
                tasks:
                  - {does: {en: Rest, es: Descanse}, due: P2D}
                staff-tasks:
                  - {does: {en: Call, es: Llamar}, who: nurse, due: P-2D}
                signs: [hip-less]
                why: {en: Because, es: Porque}
                source: common practice, no source
              - id: second
                name: {en: Second, es: Segunda}
                says: {en: Says, es: Dice}
                who: surgeon
                begins:
                  - {after: first, edge: start, earliest: P1W, usual: P2W, latest: P3W}
                lasts: {least: P2D, usual: P3D, most: P4D}
                season: summer-break
                apart: [{from: first, days: 3}]
                visits:
                  - {id: look, kind: review, after: P1D, within: P5D}
                  - {id: again, kind: review, after: P1M, within: P1W, every: P3M, times: 4}
                  - {id: more, kind: review, after: P2M, within: P1W, every: P6M, until: third}
                precautions:
                  - {tag: pool, forbids: yes, from: P1W, until: P6W, says: {en: No pool, es: Sin piscina}, source: here}
                outcomes:
                  - {id: well, name: {en: Well, es: Bien}, opens: [extra]}
                  - {id: badly, name: {en: Badly, es: Mal}, tells: {en: Again, es: Otra vez}, returns-to: first}
                entry: [{en: Ready, es: Todo listo}]
                why: {en: Because, es: Porque}
                source: common practice, no source
              - id: extra
                name: {en: Extra, es: Extra}
                says: {en: Says, es: Dice}
                who: therapist
                begins: [{after: second, edge: end, earliest: P1D, usual: P1D, latest: P2W}]
                lasts: P0D
                optional: yes
                why: {en: Because, es: Porque}
                source: common practice, no source
              - id: third
                name: {en: Third, es: Tercera}
                says: {en: Says, es: Dice}
                who: nurse
                begins: [{after: second, edge: start, earliest: P6M, usual: P1Y}]
                lasts: P0D
                repeats: {every: P1Y, times: 5}
                why: {en: Because, es: Porque}
                source: common practice, no source
            """;

    private static List<String> mistakes(String yaml) {
        return ContentReading.text(ReadPaths.kind(), "paths/small.yaml", yaml);
    }

    @Test
    void thePathThatTheyAreMadeInIsRight() {
        assertThat(mistakes(RIGHT)).isEmpty();
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', textBlock = """
            begins-at: second             | begins-at: nowhere          | "begins-at" is nowhere, expected a stage of this path
            on: second                    | on: nowhere                 | "on" is nowhere, expected a stage of this path
            to: 9                         | to: 3                       | "to" is 3, expected "from" or older
            until: second                 | until: nowhere              | "until" names nowhere, expected a stage that stands after this one
            until: second                 | until: first                | "until" names first, expected a stage that stands after this one
            due: P2D                      | due: soon                   | "due" is soon, expected a gap
            due: P-2D                     | due: 2                      | "due" is 2, expected a gap
            due: P-2D                     | due: P-13M                  | "due" is P-13M, expected P-1Y to P20Y
            due: P2D                      | due: P21Y                   | "due" is P21Y, expected P-1Y to P20Y
            who: surgeon                  | who: barber                 | "who" is barber, expected one of surgeon
            hip-less                      | hip-lost                    | "signs" is hip-lost, expected one of
            {en: Second, es: Segunda}     | {en: Second}                | "es" is missing, expected a text
            {en: Second, es: Segunda}     | {en: Second, es: }          | "es" is empty, expected a text
            {en: Again, es: Otra vez}     | {es: Otra vez}              | "en" is missing, expected a text
            {en: Ready, es: Todo listo}   | {en: Ready}                 | "es" is missing, expected a text
            {en: Rest, es: Descanse}      | {en: Rest}                  | "es" is missing, expected a text
            after: first                  | after: third                | "after" is third, expected a stage that stands before this one
            usual: P2W                    | usual: P4W                  | "usual" is P4W, expected a gap between earliest and latest
            latest: P3W                   | latest: P5D                 | "usual" is P2W, expected a gap between earliest and latest
            earliest: P1W, usual: P2W     | earliest: P-1W, usual: P2W  | "earliest" is P-1W, expected P0D or more
            least: P2D                    | least: P-2D                 | "least" is P-2D, expected P0D or more
            most: P4D                     | most: P1D                   | "usual" is P3D, expected a length between least and most
            season: summer-break          | season: monsoon             | "season" is monsoon, expected one of
            {from: first, days: 3}        | {from: third, days: 3}      | "from" is third, expected a stage that stands before
            {from: first, days: 3}        | {from: first, days: 0}      | "days" is 0, expected a whole number from 1
            look, kind: review            | look, kind: chat            | "kind" is chat, expected one of
            within: P5D                   | within: P-5D                | "within" is P-5D, expected P0D or more
            every: P3M                    | every: P0D                  | "every" is P0D, expected more than P0D
            times: 4                      | times: 1                    | "times" is 1, expected a whole number from 2
            id: again, kind               | id: look, kind              | "look" stands twice, expected each visit once
            every: P6M, until: third      | every: P6M, until: first    | "until" names first, expected a stage that stands after
            tag: pool                     | tag: pond                   | "tag" is pond, expected one of
            until: P6W                    | until: P1W                  | "until" is P1W, expected a gap longer than "from"
            opens: [extra]                | opens: [nowhere]            | "opens" names nowhere, expected a stage that stands after this one
            opens: [extra]                | skips: [first]              | "skips" names first, expected a stage that stands after this one
            returns-to: first             | returns-to: third           | "returns-to" names third, expected this stage or one that
            id: badly                     | id: well                    | "well" stands twice, expected each outcome once
            every: P1Y                    | every: P-1Y                 | "every" is P-1Y, expected more than P0D
            times: 5                      | times: 5, until: extra      | the repeat has both or neither of "times" and "until"
            id: third                     | id: extra                   | "extra" stands twice, expected each stage once
            optional: yes                 | optional: maybe             | "optional" is maybe, expected yes or no
            optional: yes                 | colour: red                 | "colour" is not known here, expected one of
            """)
    void isToldOnceWithFileAndLine(String right, String wrong, String told) {
        assertThat(RIGHT).contains(right);
        var broken = RIGHT.replaceFirst(java.util.regex.Pattern.quote(right), wrong);
        var before = RIGHT.substring(0, RIGHT.indexOf(right));
        long line = 1 + before.chars().filter(c -> c == '\n').count();
        var mistakes = mistakes(broken);
        assertThat(mistakes)
                .filteredOn(one -> one.contains(told))
                .singleElement()
                .asString()
                .startsWith("content/paths/small.yaml:" + line + ": ");
    }

    /** Two weeks at most after the first, and at least a month after it by another way round. */
    @Test
    void rulesWithoutSlackBetweenThemStopTheStart() {
        var tight = RIGHT.replace(
                "- {after: first, edge: start, earliest: P1W, usual: P2W, latest: P3W}",
                "- {after: first, edge: start, earliest: P1W, usual: P2W, latest: P3W}\n"
                        + "      - {after: first, edge: start, earliest: P1M, latest: P2M}");
        assertThat(mistakes(tight))
                .singleElement()
                .asString()
                .isEqualTo("content/paths/small.yaml:27: no day keeps all rules of second,"
                        + " expected gaps and lengths that can be kept together");
    }

    @Test
    void aSeasonNamesTheLineOfEveryMistakeToo() {
        assertThat(ContentReading.text(new SeasonKind(), "seasons/break.yaml", """
                name: {en: Break}
                each-year:
                  from: {month: juno, day: 15}
                  until: {month: september, day: 31}
                  colour: red
                """))
                .hasSize(4)
                .anyMatch(l -> l.startsWith("content/seasons/break.yaml:1: \"es\" is missing"))
                .anyMatch(l -> l.startsWith("content/seasons/break.yaml:3: \"month\" is juno, expected one of january"))
                .anyMatch(
                        l -> l.startsWith("content/seasons/break.yaml:4: \"day\" is 31, expected a day that the month"))
                .anyMatch(l -> l.startsWith("content/seasons/break.yaml:5: \"colour\" is not known here"));
    }

    @Test
    void allOfThemAreToldAtOnce() {
        var broken = RIGHT.replace("begins-at: second", "begins-at: nowhere")
                .replace("{en: Second, es: Segunda}", "{en: Second}")
                .replace("latest: P3W", "latest: P5D")
                .replace("within: P5D", "within: P-5D")
                .replace("tag: pool", "tag: pond")
                .replace("opens: [extra]", "opens: [nowhere]")
                .replace("every: P1Y", "every: P0D");
        assertThat(mistakes(broken))
                .extracting(line -> line.replaceAll("content/paths/small.yaml:(\\d+): .*", "$1"))
                .containsExactlyInAnyOrder("5", "23", "27", "32", "36", "38", "58");
    }
}
