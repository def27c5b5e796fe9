package org.hearthway.paper.internal;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Bounds of the emergency sheet. A link lives long enough for a ride to the hospital and short enough for a lost
 * telephone; papers are printed often enough for every ward and too seldom to keep a machine busy. Common practice, no
 * source.
 *
 * @param linkLife {@code hearthway.emergency.link-life}, how long a link lives, 10 minutes to 12 hours
 * @param papers {@code hearthway.emergency.papers}, PDFs that may be made within a while by the links of one account, 5
 *     to 1000
 * @param papersWithin {@code hearthway.emergency.papers-within}, that while, 1 minute to 1 hour
 */
@ConfigurationProperties("hearthway.emergency")
record SheetRules(
        @DefaultValue("PT2H") Duration linkLife,
        @DefaultValue("30") int papers,
        @DefaultValue("PT10M") Duration papersWithin) {

    private static final Duration LEAST = Duration.ofMinutes(10);
    private static final Duration MOST = Duration.ofHours(12);
    private static final int FEWEST_PAPERS = 5;
    private static final int MOST_PAPERS = 1_000;

    SheetRules {
        if (linkLife.compareTo(LEAST) < 0 || linkLife.compareTo(MOST) > 0) {
            throw new IllegalArgumentException("hearthway.emergency.link-life must be PT10M to PT12H");
        }
        if (papers < FEWEST_PAPERS || papers > MOST_PAPERS) {
            throw new IllegalArgumentException(
                    "hearthway.emergency.papers must be " + FEWEST_PAPERS + " to " + MOST_PAPERS);
        }
        if (papersWithin.compareTo(Duration.ofMinutes(1)) < 0 || papersWithin.compareTo(Duration.ofHours(1)) > 0) {
            throw new IllegalArgumentException("hearthway.emergency.papers-within must be PT1M to PT1H");
        }
    }
}
