package org.hearthway.access.internal;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.hearthway.access.Account;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.RememberMeAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.RememberMeServices;
import org.springframework.security.web.authentication.logout.LogoutHandler;
import org.springframework.stereotype.Component;

/** Lets a caregiver's phone in without a password, when the caregiver asked for it. Staff never. */
@Component
class StaySignedIn implements RememberMeServices, LogoutHandler {

    static final String ASKED = "stay";
    static final String COOKIE = "hearthway-phone";
    /** Names who made the authentication; within one run of the program only. */
    static final String MADE_HERE = java.util.UUID.randomUUID().toString();

    /** Files that a page brings along: the page itself has signed the phone in. */
    private static final List<String> FILES = List.of("/look/", "/figure/", "/offline/", "/VAADIN/", "/parts/");

    private final RememberedPhones phones;
    private final AccountRows rows;
    private final Cookies cookies;
    private final KnownDevices devices;

    StaySignedIn(RememberedPhones phones, AccountRows rows, Cookies cookies, KnownDevices devices) {
        this.phones = phones;
        this.rows = rows;
        this.cookies = cookies;
        this.devices = devices;
    }

    @Override
    public @Nullable Authentication autoLogin(HttpServletRequest request, HttpServletResponse response) {
        var token = cookies.read(request, COOKIE);
        if (token.isEmpty() || FILES.stream().anyMatch(request.getRequestURI()::startsWith)) {
            return null;
        }
        var known = phones.present(token.get());
        var principal = known.flatMap(k -> rows.find(k.account()))
                .map(AccountRows.Stored::account)
                .filter(StaySignedIn::may)
                .map(account -> new AccountPrincipal(account, null));
        if (principal.isEmpty()) {
            cookies.remove(request, response, COOKIE);
            return null;
        }
        known.flatMap(RememberedPhones.Known::fresh)
                .ifPresent(fresh -> cookies.write(request, response, COOKIE, fresh, RememberedPhones.LASTS));
        return new RememberMeAuthenticationToken(
                MADE_HERE, principal.get(), principal.get().getAuthorities());
    }

    private static boolean may(Account account) {
        return account.state() == Account.State.ACTIVE
                && account.roles().stream().noneMatch(org.hearthway.base.Role::isStaff);
    }

    @Override
    public void loginFail(HttpServletRequest request, HttpServletResponse response) {
        // a wrong password says nothing about the phone
    }

    @Override
    public void loginSuccess(HttpServletRequest request, HttpServletResponse response, Authentication authentication) {
        var principal = (AccountPrincipal) authentication.getPrincipal();
        devices.remember(request, response, principal.account());
        cookies.read(request, COOKIE).ifPresent(phones::forget);
        if (!principal.isStaff() && request.getParameter(ASKED) != null) {
            cookies.write(request, response, COOKIE, phones.remember(principal.account()), RememberedPhones.LASTS);
        }
    }

    @Override
    public void logout(
            HttpServletRequest request, HttpServletResponse response, @Nullable Authentication authentication) {
        cookies.read(request, COOKIE).ifPresent(phones::forget);
        cookies.remove(request, response, COOKIE);
    }
}
