package org.hearthway.access;

import java.util.Optional;

/** Passwords, which a person sets with the link of an invitation; nobody else ever knows them. */
public interface Passwords {

    /** Whom a link lets set a password, when it still holds. Changes nothing. */
    Optional<Account> opens(String token);

    /**
     * Sets the password and uses the link up; every sign-in of the person that is open ends.
     *
     * @param token of the link
     * @param password 15 to 256 characters, none of the very common phrases or words of the clinic alone
     * @throws org.hearthway.base.Invalid when the password will not do; the link still holds then
     * @throws org.hearthway.base.NotAvailable when the link does not hold, or of two at once the other was first
     */
    void set(String token, String password);
}
