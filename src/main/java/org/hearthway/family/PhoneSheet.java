package org.hearthway.family;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a phone takes along for the time without a signal, as the script of the session reads it: the days, how each
 * exercise is done, whom to call, and all words in the person's language. Nothing of another child, nothing of the path.
 *
 * @param account whose phone it is now
 * @param child whose exercises
 * @param home address of the page of Today
 * @param lang the two-letter tag of the language
 * @param zone of the person, by which days begin
 * @param now the server's time in milliseconds since 1970, by which the phone sets its clock right
 * @param until from this time on, in milliseconds, the plan is too old to go by
 * @param version of the program, 0 for none
 * @param helper whether the person is no member of the family, and writes no notes
 * @param pause the sentence over a time in which nothing is asked; null for none
 * @param token that each entry brings back, against forgery
 * @param words by their short names
 * @param counted words that differ with a number, by their short names; the place in the list is the number
 * @param faces pictures over the rows of numbers, by row, one for each band
 * @param calls whom to call, most urgent first
 * @param signs that mean a call today or now
 * @param exercises how each is done, by identifier
 * @param days the days, yesterday first
 */
record PhoneSheet(
        String account,
        Kid child,
        String home,
        String lang,
        String zone,
        long now,
        long until,
        int version,
        boolean helper,
        @Nullable String pause,
        Token token,
        Map<String, String> words,
        Map<String, List<String>> counted,
        Map<String, List<List<Faces.Piece>>> faces,
        List<Call> calls,
        List<Sign> signs,
        Map<String, Lesson> exercises,
        List<Day> days) {

    /** The child: what it is called, and the tone of skin of its figures. */
    record Kid(String id, String name, int tone) {}

    /** What a request that changes something carries in this header. */
    record Token(String header, String value) {}

    /** Whom to call. */
    record Call(String style, String icon, String title, String detail, String call, String number, String link) {}

    /** A sign that means a call, and how soon. */
    record Sign(String style, String says) {}

    /** How an exercise is done. */
    record Lesson(String name, String purpose, List<String> steps, String stop) {}

    /**
     * One day.
     *
     * @param label the date with its weekday
     * @param lead how many exercises and how many minutes
     */
    record Day(LocalDate date, String label, String lead, List<Item> planned) {}

    /**
     * One exercise of a day.
     *
     * @param dose large number and small word for each cell
     * @param says the dose in one line
     * @param note of the therapist, may be empty
     * @param side which side, null for an exercise without sides
     * @param notFrom the first of these days on which it is forbidden, null for none of them
     * @param said what was said of it before, null for nothing
     */
    record Item(
            String exercise,
            List<DoseWords.Cell> dose,
            String says,
            int minutes,
            String note,
            @Nullable Shown side,
            Picture picture,
            Timer timer,
            List<Shown> cautions,
            @Nullable LocalDate notFrom,
            @Nullable String notFromSays,
            @Nullable Past said) {}

    /** A short strong word and the words beside it. */
    record Shown(String strong, String words) {}

    /** Addresses of the pictures, width over height, and what is to be seen. */
    record Picture(String start, String end, String moving, double ratio, String words) {}

    /**
     * What a timer or counter needs.
     *
     * @param kind {@code hold} with seconds, or {@code count}
     * @param seconds of one hold, 0 for one that is counted
     * @param times in a round: holds, or repetitions to count
     * @param rest seconds between two rounds
     * @param sides one after another; one without a name where the exercise has none
     */
    record Timer(String kind, int seconds, int times, int rounds, int rest, List<String> sides) {}

    /** What was said before: by whom, and its turn. */
    record Past(String outcome, String words, boolean severe, long turn) {}
}
