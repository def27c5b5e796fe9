package org.hearthway.access;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.hearthway.base.AccountId;
import org.hearthway.base.Language;
import org.hearthway.base.Viewer;

/** The people who may sign in. */
public interface Accounts {

    /** A link handed to a person to set a password with; shown once, valid once. */
    record Invitation(AccountId account, String url, Instant expires) {}

    /** Everybody, by name; for administrators. */
    List<Account> all(Viewer viewer);

    /** Those among the identifiers that exist; for staff and the machine: whom to write to, who wrote. */
    Map<AccountId, Account> byId(Viewer viewer, Collection<AccountId> ids);

    /**
     * Invites a person.
     *
     * @throws org.hearthway.base.Invalid naming field and bound, also when the address is taken
     */
    Invitation invite(Viewer viewer, NewAccount account);

    /** A fresh link for a person who lost the first, or the password; earlier links die. */
    Invitation renewLink(Viewer viewer, AccountId account);

    /** Ends a person's access at once: sessions, stay-signed-in tokens and links die. */
    void disable(Viewer viewer, AccountId account);

    /** Lets a disabled person in again. */
    void enable(Viewer viewer, AccountId account);

    /** Changes the language of the viewer's own screens and messages; everybody may, for themselves alone. */
    void speak(Viewer.Person viewer, Language language);
}
