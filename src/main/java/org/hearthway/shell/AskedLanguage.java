package org.hearthway.shell;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.hearthway.base.Language;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.LocaleResolver;

/**
 * The language of a page outside a sign-in: what the address asks for ({@code ?lang=es}), else what this browser asked
 * for before, else what the browser is set to.
 */
@Component("localeResolver")
class AskedLanguage implements LocaleResolver {

    private static final String PARAMETER = "lang";
    private static final String COOKIE = "hearthway-language";

    @Override
    public Locale resolveLocale(HttpServletRequest request) {
        return language(request).locale();
    }

    Language language(HttpServletRequest request) {
        return inAddress(request).or(() -> remembered(request)).orElseGet(() -> browser(request));
    }

    /** What the address asks for, when it asks for a language that we speak. */
    static Optional<Language> inAddress(HttpServletRequest request) {
        return tagged(request.getParameter(PARAMETER));
    }

    private static Optional<Language> remembered(HttpServletRequest request) {
        return Optional.ofNullable(request.getCookies()).stream()
                .flatMap(Arrays::stream)
                .filter(cookie -> cookie.getName().equals(COOKIE))
                .map(Cookie::getValue)
                .flatMap(tag -> tagged(tag).stream())
                .findFirst();
    }

    private static Optional<Language> tagged(@Nullable String tag) {
        return Arrays.stream(Language.values())
                .filter(language -> language.tag().equals(tag))
                .findFirst();
    }

    private static Language browser(HttpServletRequest request) {
        var asked = request.getLocales();
        while (asked.hasMoreElements()) {
            var found = tagged(asked.nextElement().getLanguage());
            if (found.isPresent()) {
                return found.get();
            }
        }
        return Language.EN;
    }

    /** Remembers a language that the address asked for, so that the next page speaks it too. */
    void remember(HttpServletRequest request, HttpServletResponse response) {
        inAddress(request)
                .map(language -> ResponseCookie.from(COOKIE, language.tag())
                        .path("/")
                        .maxAge(Duration.ofDays(365))
                        .httpOnly(true)
                        .secure(request.isSecure())
                        .sameSite("Lax")
                        .build())
                .ifPresent(cookie -> response.addHeader(HttpHeaders.SET_COOKIE, cookie.toString()));
    }

    @Override
    public void setLocale(HttpServletRequest request, @Nullable HttpServletResponse response, @Nullable Locale locale) {
        throw new UnsupportedOperationException("the address or the browser says the language");
    }
}
