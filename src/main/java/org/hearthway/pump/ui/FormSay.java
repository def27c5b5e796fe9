package org.hearthway.pump.ui;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.regex.Pattern;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.hearthway.pump.engine.ClinicRules;
import org.hearthway.words.Words;

/**
 * What the forms of a pump speak with: words, figures, and what the clinic keeps to.
 *
 * @param zone of the clinic
 */
record FormSay(Words words, PumpWords pump, PumpFigures figures, ClinicRules rules, ZoneId zone) {

    private static final Pattern TIME = Pattern.compile("\\d\\d:\\d\\d");

    String say(String key, Object... args) {
        return pump.say(key, args);
    }

    /** What is wrong, with times as the fields show them. */
    String say(Problem problem) {
        return words.say(
                pump.language(),
                new Problem(
                        problem.field(),
                        problem.key(),
                        problem.args().stream().map(FormSay::told).toList()));
    }

    private static Object told(Object arg) {
        return arg instanceof String text && TIME.matcher(text).matches() ? LocalTime.parse(text) : arg;
    }

    Language language() {
        return pump.language();
    }
}
