package org.hearthway.access;

import java.time.ZoneId;
import java.util.Set;
import org.hearthway.base.Language;
import org.hearthway.base.Role;

/**
 * What is entered to invite a person.
 *
 * @param name 1 to 120 characters
 * @param email a mail address, at most 254 characters
 * @param phone a number or empty
 * @param roles at least one
 * @param language of screens and messages
 * @param zone of the person's own clock
 */
public record NewAccount(String name, String email, String phone, Set<Role> roles, Language language, ZoneId zone) {

    public NewAccount {
        roles = Set.copyOf(roles);
    }
}
