package org.hearthway.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import org.hearthway.clinic.ClinicCalendar;

/**
 * The days of the stories, counted from today.
 *
 * @param today the day on which the demo is laid out
 * @param calendar when the clinic is open
 * @param zone the clinic's zone
 */
record DemoDays(LocalDate today, ClinicCalendar calendar, ZoneId zone) {

    LocalDate on(int day) {
        return today.plusDays(day);
    }

    /** The day itself when the clinic is open, else the nearest open one, further from today. */
    LocalDate open(int day) {
        return day < 0 ? calendar.onOrBefore(on(day)) : calendar.onOrAfter(on(day));
    }

    Instant moment(int day, LocalTime time) {
        return on(day).atTime(time).atZone(zone).toInstant();
    }

    /** A moment in the office, where nobody is on a day when the clinic is closed. */
    Instant atWork(int day, LocalTime time) {
        return open(day).atTime(time).atZone(zone).toInstant();
    }
}
