package org.hearthway.access;

import java.time.ZoneId;
import java.util.Set;
import org.hearthway.base.AccountId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;

/**
 * A person who may sign in.
 *
 * @param id identifier
 * @param name how the person is called on the screens
 * @param email address to sign in with and to be written to, in lower case
 * @param phone number to call, or empty
 * @param roles at least one
 * @param language of screens and messages
 * @param zone of the person's own clock; quiet hours follow it
 * @param state whether the person can sign in
 */
public record Account(
        AccountId id,
        String name,
        String email,
        String phone,
        Set<Role> roles,
        Language language,
        ZoneId zone,
        State state) {

    /** Whether the person can sign in. */
    public enum State {
        /** Has a link, no password yet. */
        INVITED,
        ACTIVE,
        DISABLED
    }

    public Account {
        roles = Set.copyOf(roles);
    }
}
