package org.hearthway.pump.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.dom.Element;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.Language;
import org.hearthway.pump.engine.DayPattern;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.FlowRate;
import org.hearthway.pump.engine.Step;
import org.hearthway.words.Words;
import org.junit.jupiter.api.Test;

/** What the page tells in each state of a pump. It is Thursday, March 12, 2026, 9:40 in New York. */
class PumpPageTests {

    private final Words words = new Words();
    private final PumpStory story = new PumpStory();

    private Component page(PumpReading reading) {
        return page(reading, Language.EN);
    }

    private Component page(PumpReading reading, Language language) {
        var figures = new PumpFigures(new PumpWords(words, language), PumpStory.ZONE);
        return new PumpPage(figures, words, reading, new NoActs(), explanation -> {});
    }

    private static Stream<Element> elements(Element element) {
        return Stream.concat(Stream.of(element), element.getChildren().flatMap(PumpPageTests::elements));
    }

    private static String told(Component component) {
        return elements(component.getElement())
                .filter(Element::isTextNode)
                .map(Element::getText)
                .collect(Collectors.joining("\n"));
    }

    @Test
    void tellsWhatIsExpectedTheDatesAndWhatDecidesThem() {
        assertThat(told(page(story.reading())))
                .contains("Constant rate, 120 mcg/day")
                .contains("Mar 12, 2026 and Mar 26, 2026")
                .contains("The alarm decides: the alarm date less 5 days of margin")
                .contains("Ours: Mar 31, 2026. Print-out: Mar 31, 2026.")
                .contains("Never plan by it")
                .contains("180 days after the fill: this clinic’s limit. The product label decides.")
                .contains("6.57 mL");
        assertThat(told(page(story.reading(), Language.ES))).contains("Ritmo constante, 120 mcg/día");
    }

    @Test
    void theDayOnWhichItIsEmptyIsForThoseWhoRecord() {
        assertThat(told(page(story.lookedAtByOthers().reading())))
                .doesNotContain("Never plan by it")
                .doesNotContain("never plan by it");
    }

    @Test
    void ofNoFillItSaysWhy() {
        assertThat(told(page(story.withoutFill().reading()))).contains("No refill recorded");
        assertThat(told(page(
                        story.withoutFill().unfilled(LocalDate.of(2026, 3, 1)).reading())))
                .contains("The pump is in since Mar 1, 2026: its first fill is not recorded yet.");
        assertThat(told(page(
                        story.withoutFill().takenOut(LocalDate.of(2026, 3, 2)).reading())))
                .contains("taken out on Mar 2, 2026");
    }

    @Test
    void whileARefillIsCheckedOthersReadNoFigureOfItAndNoDateOfBefore() {
        var told = told(page(story.refillWaits(false).reading()));
        assertThat(told)
                .contains("Refilled on Mar 12, 2026; the next date is being checked.")
                .contains("Entered by Nurse One")
                .contains("Its figures stay hidden")
                .doesNotContain("17.4")
                .doesNotContain("expected now")
                .doesNotContain("Refill between")
                .doesNotContain("Mar 26, 2026");
    }

    @Test
    void theOneWhoEnteredItReadsItsFiguresInTheBookAndCannotCheckIt() {
        var page = page(story.refillWaits(true).reading());
        assertThat(told(page)).contains("17.4 mL").doesNotContain("Its figures stay hidden");
        assertThat(buttons(page)).contains("Correct").doesNotContain("Check");
        assertThat(buttons(page(story.refillWaits(false).reading()))).contains("Check");
    }

    private static List<String> buttons(Component page) {
        return elements(page.getElement())
                .filter(element -> !element.isTextNode() && element.getTag().equals("button"))
                .map(Element::getTextRecursively)
                .toList();
    }

    @Test
    void withoutTheFiguresOfThePumpItReckonsNothing() {
        var told = told(page(story.withoutFigures().reading()));
        assertThat(told)
                .contains("the figures of the pump. Nothing can be reckoned; the print-out’s date stands.")
                .contains("By the print-out; our own date cannot be reckoned.")
                .doesNotContain("In the pump now");
    }

    @Test
    void anAlarmThatIsPassedAsksNotToWait() {
        assertThat(told(page(story.at(Instant.parse("2026-04-02T13:40:00Z")).reading())))
                .contains("The alarm date, Mar 31, 2026, is here or past.");
        assertThat(told(page(story.at(Instant.parse("2026-03-26T13:40:00Z")).reading())))
                .contains("The last day of the window, Mar 26, 2026, is here or past.");
    }

    @Test
    void aStoppedPumpSaysSoAndForeseesNoAlarm() {
        assertThat(told(page(story.set(Dosing.stopped()).reading())))
                .contains("The pump is stopped: nothing is given.")
                .contains("Stopped: nothing is given");
    }

    @Test
    void ofAStoppedPumpNoTimeToTheAlarmIsTold() {
        var figures = new PumpFigures(new PumpWords(words, Language.EN), PumpStory.ZONE);
        assertThat(told(new StoppedPanel(figures, story.reading(), PumpStory.CLINIC, () -> {})))
                .contains("19 days 1 hour")
                .contains("555-0121")
                .contains("Do not wait");
        assertThat(told(new StoppedPanel(figures, story.set(Dosing.stopped()).reading(), PumpStory.CLINIC, () -> {})))
                .contains("Nothing is given since")
                .doesNotContain("Time left to the alarm");
        assertThat(told(new StoppedPanel(figures, story.withoutFigures().reading(), PumpStory.CLINIC, () -> {})))
                .contains("no time can be reckoned");
    }

    @Test
    void aFixedRateIsSaidToBeOne() {
        assertThat(told(page(story.fixedRate(FlowRate.millilitresPerDay("0.3")).reading())))
                .contains("The flow of this pump was set when it was made.")
                .contains("Fixed rate of the pump, 0.3 mL/day; at this strength 150 mcg/day");
    }

    @Test
    void stepsOfAScheduleAreToldAndThatTheyRunOffSinceTheClocksChanged() {
        var schedule = Dosing.cycle(Step.of("06:00", "22:00", "4"), Step.of("22:00", "06:00", "7"));
        assertThat(told(page(story.set(schedule).reading())))
                .contains("Step schedule, 120 mcg/day in all")
                .contains("6:00 AM to 10:00 PM: 4 mcg/h")
                .contains("Local time changed on Mar 8, 2026")
                .contains("one hour off until the next programming: what was set for 6:00 runs at 7:00");
    }

    @Test
    void aWeekIsToldDayByDayWithItsMean() {
        var quiet = DayPattern.of(Step.of("00:00", "00:00", "5"));
        var school = DayPattern.of(Step.of("06:00", "18:00", "6"), Step.of("18:00", "06:00", "5"));
        var week = new EnumMap<DayOfWeek, DayPattern>(DayOfWeek.class);
        for (var day : DayOfWeek.values()) {
            week.put(day, day == DayOfWeek.SATURDAY || day == DayOfWeek.SUNDAY ? quiet : school);
        }
        assertThat(told(page(story.set(Dosing.week(week)).reading())))
                .contains("A schedule for each weekday, 128.6 mcg/day in the mean")
                .contains("Saturday, 120 mcg/day: 12:00 AM to 12:00 AM: 5 mcg/h")
                .contains("(132 mcg/day + 132 mcg/day + 132 mcg/day + 132 mcg/day + 132 mcg/day + 120 mcg/day"
                        + " + 120 mcg/day) ÷ 7");
    }

    @Test
    void datesThatAreApartAskForAnExplanationUntilThereIsOne() {
        var apart = page(story.printed(LocalDate.of(2026, 3, 27)).reading());
        assertThat(told(apart))
                .contains("Print-out and our alarm date are 4 days apart.")
                .contains("The earlier, Mar 27, 2026, stands everywhere.")
                .contains("Keep the explanation");
        assertThat(told(page(story.explained("other alarm volume").reading())))
                .contains("Explained: “other alarm volume” (Nurse One")
                .doesNotContain("Keep the explanation");
    }

    @Test
    void aResidualOutsideTheLimitsBringsTheListOfUsualThings() {
        assertThat(told(page(story.found("9.5").reading())))
                .contains("look into it: more left")
                .contains("the catheter: kinked")
                .contains("or more than 15 % of what was planned");
        assertThat(told(page(story.found("2.1").reading())))
                .contains("look into it: less left")
                .contains("leaked beside the port");
        assertThat(told(page(story.found("6.5").reading())))
                .contains("within the limits")
                .doesNotContain("Usually checked");
    }

    @Test
    void aSupersededLineIsStruckWithItsReason() {
        assertThat(told(page(story.superseded("wrong strength typed").reading())))
                .contains("Superseded by line 3. wrong strength typed")
                .contains("emergency");
    }

    @Test
    void theSumsCanBeReckonedAgain() {
        var page = page(story.reading());
        var parts = elements(page.getElement())
                .filter(element -> !element.isTextNode() && element.getTag().equals("dd"))
                .map(Element::getTextRecursively)
                .toList();
        var checked = 0;
        for (var i = 0; i + 1 < parts.size(); i++) {
            if (parts.get(i + 1).contains("÷")) {
                PocketCalculator.check(parts.get(i), parts.get(i + 1));
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(4);
    }

    private static final class NoActs implements PumpActs {
        @Override
        public void refill() {}

        @Override
        public void elsewhere() {}

        @Override
        public void change() {}

        @Override
        public void figures() {}

        @Override
        public void check(long number) {}

        @Override
        public void correct(long number) {}
    }
}
