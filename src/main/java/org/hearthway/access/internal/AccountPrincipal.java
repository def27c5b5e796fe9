package org.hearthway.access.internal;

import java.util.Collection;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.access.Account;
import org.hearthway.base.AccountId;
import org.hearthway.base.Role;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.CredentialsContainer;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.userdetails.UserDetails;

/** A signed-in account as the session keeps it: identifier and roles; no name, and no password once signed in. */
final class AccountPrincipal implements UserDetails, CredentialsContainer {

    private static final long serialVersionUID = 1L;

    private final UUID id;
    private final Set<SimpleGrantedAuthority> roles;
    private @Nullable String passwordHash;

    AccountPrincipal(Account account, @Nullable String passwordHash) {
        this.id = account.id().value();
        this.roles = account.roles().stream()
                .map(role -> new SimpleGrantedAuthority("ROLE_" + role.name()))
                .collect(Collectors.toUnmodifiableSet());
        this.passwordHash = passwordHash;
    }

    AccountId account() {
        return new AccountId(id);
    }

    boolean is(AccountId account) {
        return account.value().equals(id);
    }

    boolean isStaff() {
        return roles.stream()
                .map(role -> role.getAuthority().substring("ROLE_".length()))
                .map(Role::valueOf)
                .anyMatch(Role::isStaff);
    }

    @Override
    public Collection<? extends GrantedAuthority> getAuthorities() {
        return roles;
    }

    @Override
    public @Nullable String getPassword() {
        return passwordHash;
    }

    @Override
    public String getUsername() {
        return id.toString();
    }

    @Override
    public void eraseCredentials() {
        passwordHash = null;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof AccountPrincipal that && that.id.equals(id);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }

    @Override
    public String toString() {
        return "account " + id;
    }
}
