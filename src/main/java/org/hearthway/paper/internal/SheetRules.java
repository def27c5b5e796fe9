package org.hearthway.paper.internal;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How long a link to an emergency sheet lives ({@code hearthway.emergency.link-life}): long enough for a ride to the
 * hospital, short enough for a lost telephone. Common practice, no source.
 *
 * @param linkLife 10 minutes to 12 hours
 */
@ConfigurationProperties("hearthway.emergency")
record SheetRules(@DefaultValue("PT2H") Duration linkLife) {

    private static final Duration LEAST = Duration.ofMinutes(10);
    private static final Duration MOST = Duration.ofHours(12);

    SheetRules {
        if (linkLife.compareTo(LEAST) < 0 || linkLife.compareTo(MOST) > 0) {
            throw new IllegalArgumentException("hearthway.emergency.link-life must be PT10M to PT12H");
        }
    }
}
