package org.hearthway.pump;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * What the clinic keeps to for every pump ({@code hearthway.pump.*}).
 *
 * @param marginDays days before the alarm by which a pump is refilled unless the nurse says otherwise, 3 to 14; common
 *     practice, no source
 * @param lifeLimitDays longest time the drug may stay in the reservoir, 1 to 180; the product label decides
 */
@ConfigurationProperties("hearthway.pump")
public record PumpRules(
        @DefaultValue("5") int marginDays,
        @DefaultValue("180") int lifeLimitDays) {

    /** Least days of margin. */
    public static final int LEAST_MARGIN = 3;

    /** Most days of margin. */
    public static final int MOST_MARGIN = 14;

    private static final int LONGEST_LIFE = 180;

    public PumpRules {
        if (marginDays < LEAST_MARGIN || marginDays > MOST_MARGIN) {
            throw new IllegalArgumentException("hearthway.pump.margin-days must be 3 to 14");
        }
        if (lifeLimitDays < 1 || lifeLimitDays > LONGEST_LIFE) {
            throw new IllegalArgumentException("hearthway.pump.life-limit-days must be 1 to 180");
        }
    }
}
