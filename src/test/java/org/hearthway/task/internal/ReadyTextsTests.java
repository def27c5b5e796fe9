package org.hearthway.task.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.doAnswer;
import static org.mockito.Mockito.doReturn;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.content.ContentReading;
import org.hearthway.content.SignOff;
import org.hearthway.path.engine.Plan;
import org.hearthway.task.Tasks.Ready;
import org.hearthway.testing.PlanSamples;
import org.hearthway.words.ReadingLevel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ReadyTextsTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);

    private final SignOff signOff = mock(SignOff.class);
    private final ReadyTexts texts = new ReadyTexts(signOff);

    @BeforeEach
    void acceptEverything() {
        when(signOff.isShown(any())).thenReturn(true);
        doAnswer(call -> Set.copyOf(call.<List<SignOff.Item>>getArgument(0)))
                .when(signOff)
                .shownAmong(any());
        when(signOff.ownWords(any())).thenReturn(Map.of());
    }

    private List<Ready> ofFamilies() {
        return texts.ready(List.of(), TODAY).stream()
                .filter(text -> text.role().isEmpty())
                .toList();
    }

    /** Bounds of the clinic for family words; the formulas are of Kincaid 1975 and Fernández Huerta 1959. */
    @Test
    void readAtSixthGradeOrLower() {
        assertThat(ContentReading.shipped(texts)).isEmpty();
        assertThat(ofFamilies()).hasSizeGreaterThan(5).allSatisfy(text -> {
            assertThat(ReadingLevel.english(text.says().en()).fleschKincaidGrade())
                    .as(text.id())
                    .isLessThanOrEqualTo(6.9);
            assertThat(ReadingLevel.spanish(text.says().es()).fernandezHuertaEase())
                    .as(text.id())
                    .isGreaterThanOrEqualTo(70);
        });
    }

    @Test
    void refusesHardWordsAndASecondOfTheSameName() {
        var hard = """
                texts:
                  - id: one
                    to: family
                    says: {en: Facilitate comprehensive documentation of ambulation., es: Camine un poco.}
                    days: 7
                    source: common practice, no source
                    version: 1
                    reviewed: {en: none, es: none}
                  - id: one
                    to: nurse
                    says: {en: Call., es: Llamar.}
                    days: 7
                    source: common practice, no source
                    version: 1
                    reviewed: {en: none, es: none}
                """;
        assertThat(ContentReading.text(texts, "tasks/hard.yaml", hard))
                .hasSize(2)
                .anySatisfy(line -> assertThat(line).contains("the English text is hard to read"))
                .anySatisfy(line -> assertThat(line).contains("stands already"));
    }

    @Test
    void areOfferedToFamiliesOnlyInWordsThatWereAccepted() {
        ContentReading.shipped(texts);
        doReturn(Set.of(new SignOff.Item("tasks", "x-rays", 1))).when(signOff).shownAmong(any());
        when(signOff.ownWords(new SignOff.Item("tasks", "x-rays", 1)))
                .thenReturn(Map.of(0, new Bilingual("Bring your X-rays.", "Traiga sus rayos X.")));

        assertThat(ofFamilies()).singleElement().satisfies(text -> {
            assertThat(text.says().en()).isEqualTo("Bring your X-rays.");
            assertThat(text.due()).isEqualTo("2026-03-26");
        });
        assertThat(texts.ready(List.of(), TODAY)).hasSizeGreaterThan(1);
    }

    private static Plan plan(Plan.State state) {
        var stage = PlanSamples.stage("home", Bilingual.same("At home"), "Look at the wound.", "Rest.");
        return PlanSamples.plan("sdr", stage, state, TODAY, TODAY.minusDays(3), TODAY.plusDays(17));
    }

    @Test
    void comeFromTheStageThatIsOpenWithADayOfTheStage() {
        assertThat(texts.ready(List.of(plan(Plan.State.NOW)), TODAY)).hasSize(2).allSatisfy(text -> {
            assertThat(text.stage()).contains("sdr/home");
            assertThat(text.due()).isEqualTo("2026-03-29");
            assertThat(text.role()).isEmpty();
        });
        assertThat(texts.ready(List.of(plan(Plan.State.TO_COME)), TODAY)).isEmpty();
        when(signOff.isShown(any())).thenReturn(false);
        assertThat(texts.ready(List.of(plan(Plan.State.NOW)), TODAY)).isEmpty();
    }
}
