package org.hearthway.path.internal;

import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import org.hearthway.base.Language;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Says calendar gaps: "6 weeks", "3 months", "1 year and 6 months". */
@Component
public class GapWords {

    private static final int WEEK = 7;

    private final Words words;

    GapWords(Words words) {
        this.words = words;
    }

    /** The gap without its sign; days that make whole weeks are said as weeks. */
    public String say(Language language, Period gap) {
        var parts = new ArrayList<String>();
        add(parts, language, "path.gap.years", gap.getYears());
        add(parts, language, "path.gap.months", gap.getMonths());
        var days = Math.abs(gap.getDays());
        if (days != 0 && days % WEEK == 0) {
            add(parts, language, "path.gap.weeks", days / WEEK);
        } else if (days != 0 || parts.isEmpty()) {
            parts.add(words.say(language, "path.gap.days", days));
        }
        return parts.stream()
                .reduce((a, b) -> words.say(language, "path.gap.and", a, b))
                .orElseThrow();
    }

    private void add(List<String> parts, Language language, String key, int number) {
        if (number != 0) {
            parts.add(words.say(language, key, Math.abs(number)));
        }
    }
}
