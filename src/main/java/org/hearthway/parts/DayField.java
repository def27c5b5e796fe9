package org.hearthway.parts;

import com.vaadin.flow.component.datepicker.DatePicker;
import java.text.DateFormatSymbols;
import java.time.temporal.WeekFields;
import java.util.Arrays;
import java.util.List;
import org.hearthway.base.Language;
import org.hearthway.words.Words;

/**
 * A field for a day, typed or picked, that speaks the person's language and says the day in full under it, so that
 * month and day are not taken for each other. Also takes {@code 2026-03-17}.
 */
public class DayField extends DatePicker {

    /** An empty field. */
    public DayField(String label, Words words, Language language) {
        super(label);
        setLocale(language.locale());
        setI18n(words(words, language));
        setAutoOpen(false);
        addValueChangeListener(change -> setHelperText(
                change.getValue() == null
                        ? ""
                        : words.say(
                                language,
                                "parts.day.full",
                                words.weekday(language, change.getValue()),
                                words.dateWithYear(language, change.getValue()))));
    }

    private static DatePickerI18n words(Words words, Language language) {
        var locale = language.locale();
        var symbols = DateFormatSymbols.getInstance(locale);
        // the first name of the weekdays is an empty one, the last of the months too
        return new DatePickerI18n()
                .setMonthNames(List.of(symbols.getMonths()).subList(0, 12))
                .setWeekdays(from1(symbols.getWeekdays()))
                .setWeekdaysShort(from1(symbols.getShortWeekdays()))
                .setFirstDayOfWeek(WeekFields.of(locale).getFirstDayOfWeek().getValue() % 7)
                .setDateFormats(language == Language.ES ? "d/M/yyyy" : "M/d/yyyy", "yyyy-MM-dd")
                .setToday(words.say(language, "parts.day.today"))
                .setCancel(words.say(language, "parts.day.cancel"))
                .setBadInputErrorMessage(words.say(language, "parts.day.bad"));
    }

    private static List<String> from1(String[] weekdays) {
        return Arrays.asList(weekdays).subList(1, weekdays.length);
    }
}
