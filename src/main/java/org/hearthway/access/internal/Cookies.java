package org.hearthway.access.internal;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Component;

/** Cookies that no script reads and no other site sends. */
@Component
class Cookies {

    private final boolean secure;

    Cookies(ClinicSettings clinic) {
        this.secure = clinic.baseUrl().startsWith("https:");
    }

    Optional<String> read(HttpServletRequest request, String name) {
        return Optional.ofNullable(request.getCookies())
                .map(Arrays::stream)
                .orElseGet(Stream::empty)
                .filter(cookie -> cookie.getName().equals(name))
                .map(Cookie::getValue)
                .findFirst();
    }

    void write(HttpServletRequest request, HttpServletResponse response, String name, String content, Duration lasts) {
        response.addHeader(
                HttpHeaders.SET_COOKIE,
                ResponseCookie.from(name, content)
                        .path("/")
                        .maxAge(lasts)
                        .httpOnly(true)
                        .secure(secure || request.isSecure())
                        .sameSite("Lax")
                        .build()
                        .toString());
    }

    void remove(HttpServletRequest request, HttpServletResponse response, String name) {
        write(request, response, name, "", Duration.ZERO);
    }
}
