package org.hearthway.access.internal;

import static java.nio.charset.StandardCharsets.UTF_8;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.security.MessageDigest;
import java.time.Duration;
import java.util.Base64;
import org.hearthway.base.AccountId;
import org.springframework.stereotype.Component;

/**
 * Devices on which a person has signed in before. Being one opens nothing: wrong passwords are only counted apart, so
 * that a stranger's guesses elsewhere do not keep the person out.
 */
@Component
class KnownDevices {

    private static final String COOKIE = "hearthway-device";
    private static final Duration LASTS = Duration.ofDays(365);

    private final SecretKey key;
    private final Cookies cookies;

    KnownDevices(SecretKey key, Cookies cookies) {
        this.key = key;
        this.cookies = cookies;
    }

    String mark(HttpServletRequest request) {
        return cookies.read(request, COOKIE).orElse("");
    }

    boolean isKnown(String mark, AccountId account) {
        return MessageDigest.isEqual(proof(account).getBytes(UTF_8), mark.getBytes(UTF_8));
    }

    void remember(HttpServletRequest request, HttpServletResponse response, AccountId account) {
        cookies.write(request, response, COOKIE, proof(account), LASTS);
    }

    private String proof(AccountId account) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(key.digest("device:" + account));
    }
}
