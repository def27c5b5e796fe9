package org.hearthway.access.internal;

import java.util.Optional;
import org.hearthway.access.Account;
import org.hearthway.base.AccountId;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.core.Authentication;
import org.springframework.security.crypto.password.PasswordEncoder;

/** Looks at a password, unless too many wrong ones came before: then at none, not even at the right one. */
class GuardedSignIn implements AuthenticationProvider {

    private final DaoAuthenticationProvider passwords;
    private final AccountRows rows;
    private final SignInDelays delays;
    private final KnownDevices devices;

    GuardedSignIn(
            PasswordSignIn accounts,
            PasswordEncoder encoder,
            AccountRows rows,
            SignInDelays delays,
            KnownDevices devices) {
        this.passwords = new DaoAuthenticationProvider(accounts);
        this.passwords.setPasswordEncoder(encoder);
        this.passwords.setUserDetailsPasswordService(accounts);
        this.rows = rows;
        this.delays = delays;
        this.devices = devices;
    }

    @Override
    public Authentication authenticate(Authentication asked) {
        var email = AccountRows.normal(asked.getName());
        var account = rows.findByEmail(email)
                .map(AccountRows.Stored::account)
                .filter(found -> found.state() == Account.State.ACTIVE)
                .map(Account::id);
        var from = (SignInFrom) asked.getDetails();
        var known = account.filter(id -> devices.isKnown(from.device(), id)).isPresent();
        if ((!known && !delays.beginFrom(from.network())) || !begin(account, email, known)) {
            throw new LockedException("must wait");
        }
        var signedIn = passwords.authenticate(asked);
        account.ifPresent(id -> delays.succeeded(id, known, from.network()));
        return signedIn;
    }

    private boolean begin(Optional<AccountId> account, String email, boolean known) {
        return account.map(id -> delays.begin(id, known)).orElseGet(() -> delays.begin(email));
    }

    @Override
    public boolean supports(Class<?> authentication) {
        return UsernamePasswordAuthenticationToken.class.isAssignableFrom(authentication);
    }
}
