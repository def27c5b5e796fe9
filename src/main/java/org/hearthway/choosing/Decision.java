package org.hearthway.choosing;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.Bilingual;

/**
 * What the team and the family decided, as it was written down. None is altered; a later one supersedes it.
 *
 * @param number counted up per child, from 1
 * @param data what was written down
 * @param name of the path; empty when none was chosen for now
 * @param by who wrote it down
 * @param at when
 */
public record Decision(long number, Data data, Optional<Bilingual> name, AccountId by, Instant at) {

    /**
     * What a person writes down.
     *
     * @param path identifier of a path that can be begun; empty for none now
     * @param day when it was decided; not before the child was born and not in the future
     * @param present who was there, {@value Choosing#PRESENT_MIN} to {@value Choosing#PRESENT_MAX} characters
     * @param reason {@value Choosing#REASON_MIN} to {@value Choosing#REASON_MAX} characters
     */
    public record Data(Optional<String> path, LocalDate day, String present, String reason) {}
}
