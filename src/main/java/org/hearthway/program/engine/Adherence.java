package org.hearthway.program.engine;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * How much of what was planned was done. A session with a good reason (ill, told to stop because of pain) leaves the
 * count of planned ones, and extra sessions stand apart, so that neither a fever nor zeal bends the number.
 * Common practice, no source; sessions done in part are shown apart and are not counted as done.
 *
 * @param planned sessions planned in the days looked at
 * @param done of these, done
 * @param some of these, done in part
 * @param excused of these, left out for a good reason
 * @param notDone of these, left out otherwise
 * @param notReported of these, nothing was said
 * @param extra done, but not planned
 */
public record Adherence(int planned, int done, int some, int excused, int notDone, int notReported, int extra) {

    /** What was said of a session. */
    public enum Said {
        DONE,
        SOME,
        EXCUSED,
        NOT_DONE,
        NOTHING
    }

    /** One exercise on one day. */
    public record Session(boolean planned, Said said) {}

    /** Counts sessions. */
    public static Adherence of(List<Session> sessions) {
        return new Adherence(
                count(sessions, true, null),
                count(sessions, true, Said.DONE),
                count(sessions, true, Said.SOME),
                count(sessions, true, Said.EXCUSED),
                count(sessions, true, Said.NOT_DONE),
                count(sessions, true, Said.NOTHING),
                count(sessions, false, Said.DONE));
    }

    private static int count(List<Session> sessions, boolean planned, @Nullable Said said) {
        return (int) sessions.stream()
                .filter(s -> s.planned() == planned && (said == null || s.said() == said))
                .count();
    }

    /** Done of planned less excused, 0 to 100; empty when that leaves none: "none planned". */
    public OptionalDouble percent() {
        var counted = planned - excused;
        return counted == 0 ? OptionalDouble.empty() : OptionalDouble.of(100.0 * done / counted);
    }
}
