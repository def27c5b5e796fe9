package org.hearthway.pump.ui;

import java.time.ZoneId;
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

    String say(String key, Object... args) {
        return pump.say(key, args);
    }

    String say(Problem problem) {
        return words.say(pump.language(), problem);
    }

    Language language() {
        return pump.language();
    }
}
