package org.hearthway.access.internal;

import org.hearthway.access.Account;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsPasswordService;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;

/** Finds who signs in. An account that may not is answered like one that does not exist. */
class PasswordSignIn implements UserDetailsService, UserDetailsPasswordService {

    private final AccountRows rows;

    PasswordSignIn(AccountRows rows) {
        this.rows = rows;
    }

    @Override
    public UserDetails loadUserByUsername(String email) {
        return rows.findByEmail(email)
                .filter(stored -> stored.account().state() == Account.State.ACTIVE)
                .filter(stored -> stored.passwordHash() != null)
                .map(stored -> new AccountPrincipal(stored.account(), stored.passwordHash()))
                .orElseThrow(() -> new UsernameNotFoundException("no such account"));
    }

    /** Keeps the password under the present setting of the hash; sign-in calls it when an older one was found. */
    @Override
    public UserDetails updatePassword(UserDetails user, String newHash) {
        var principal = (AccountPrincipal) user;
        var stored = rows.find(principal.account()).orElseThrow(() -> new UsernameNotFoundException("no such account"));
        // overtaken by a change of the account: the next sign-in tries again
        rows.setPassword(stored, newHash, stored.account().state());
        return new AccountPrincipal(stored.account(), newHash);
    }
}
