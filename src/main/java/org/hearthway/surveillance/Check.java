package org.hearthway.surveillance;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.base.AccountId;
import org.hearthway.surveillance.engine.Watched;

/**
 * A check of hips or spine as somebody recorded it.
 *
 * @param number 1, 2, 3 … within the child and what is watched; a correction keeps it
 * @param data what was typed
 * @param by who typed it
 * @param at when
 */
public record Check(long number, CheckData data, AccountId by, Instant at) {

    /**
     * What a person types.
     *
     * @param watched hips or spine
     * @param day when the check took place; not in the future
     * @param who who did it and where, 1 to 200 characters
     * @param left migration percentage of the left hip, 0 to 100 with at most one decimal; hips only
     * @param right the same of the right hip
     * @param cobb Cobb angle of the spine in degrees, 0 to 180; spine only
     * @param stable whether the team calls it stable
     * @param note at most 500 characters
     */
    public record CheckData(
            Watched watched,
            LocalDate day,
            String who,
            Optional<BigDecimal> left,
            Optional<BigDecimal> right,
            Optional<Integer> cobb,
            boolean stable,
            String note) {

        /** Whether one of the two migration percentages reaches a bound. */
        public boolean reaches(int percent) {
            return Stream.of(left, right)
                    .flatMap(Optional::stream)
                    .anyMatch(migration -> migration.compareTo(BigDecimal.valueOf(percent)) >= 0);
        }
    }
}
