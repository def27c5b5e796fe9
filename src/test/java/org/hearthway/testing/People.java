package org.hearthway.testing;

import java.time.ZoneId;
import java.util.EnumSet;
import java.util.Set;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;

/** Viewers for tests: a fresh person each time. */
public final class People {

    /** The clinic's zone in tests. */
    public static final ZoneId ZONE = ZoneId.of("America/New_York");

    private People() {}

    /** A fresh person with these roles, without an account of its own. */
    public static Viewer.Person with(Role first, Role... more) {
        return as(AccountId.random(), first, more);
    }

    /** The person of an account. */
    public static Viewer.Person as(AccountId account, Role first, Role... more) {
        return new Viewer.Person(account, "Somebody", Set.copyOf(EnumSet.of(first, more)), Language.EN, ZONE);
    }

    /** A mail address that nobody else uses. */
    public static String freshEmail() {
        return "p" + UUID.randomUUID() + "@people.example";
    }
}
