package org.hearthway.access.internal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.hearthway.base.Problem;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.stereotype.Component;

/**
 * What a password must be: long, and nothing that everybody tries first. No rule on kinds of characters, no forced
 * change (OWASP ASVS 5.0, 6.2; NIST SP 800-63B-4: 15 characters for a password used alone).
 */
@Component
class PasswordRules {

    static final int SHORTEST = 15;
    static final int LONGEST = 256;

    private static final String LIST = "/access/common-passwords.txt";
    private static final Pattern NOT_A_LETTER = Pattern.compile("[^\\p{L}]+");
    private static final Pattern NOT_SAID = Pattern.compile("[^\\p{L}\\p{N}]+");

    private final Set<String> common;
    private final Set<String> ourWords;

    PasswordRules(ClinicSettings clinic) {
        this.common = read();
        this.ourWords = words("hearthway " + clinic.name() + " " + clinic.senderName());
    }

    private static Set<String> read() {
        try (var lines = new BufferedReader(new InputStreamReader(
                java.util.Objects.requireNonNull(PasswordRules.class.getResourceAsStream(LIST)),
                StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(PasswordRules::bare)
                    .filter(line -> !line.isEmpty())
                    .collect(Collectors.toCollection(HashSet::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Letters and digits alone, in lower case, so that a stop or a capital does not make a new phrase. */
    private static String bare(String text) {
        return NOT_SAID.matcher(normal(text)).replaceAll("");
    }

    private static String normal(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
    }

    private static Set<String> words(String text) {
        return NOT_A_LETTER
                .splitAsStream(normal(text))
                .filter(w -> w.length() > 2)
                .collect(Collectors.toSet());
    }

    /** What is wrong with a password for this person; empty when nothing is. */
    Optional<Problem> check(String password, String name, String email) {
        var length = password.codePointCount(0, password.length());
        if (length < SHORTEST) {
            return problem("access.problem.password-short", SHORTEST);
        }
        if (length > LONGEST) {
            return problem("access.problem.password-long", LONGEST);
        }
        var bare = bare(password);
        if (common.contains(bare) || bare.codePoints().distinct().count() < 5 || isRepeated(bare)) {
            return problem("access.problem.password-common");
        }
        if (isOnly(normal(password), name, email)) {
            return problem("access.problem.password-ours");
        }
        return Optional.empty();
    }

    private static Optional<Problem> problem(String key, Object... args) {
        return Optional.of(Problem.at("password", key, args));
    }

    /** Whether a piece that would be too short is only said again and again. */
    private static boolean isRepeated(String bare) {
        for (int piece = 1; piece < SHORTEST && piece <= bare.length() / 2; piece++) {
            if (bare.length() % piece == 0
                    && bare.substring(0, piece).repeat(bare.length() / piece).equals(bare)) {
                return true;
            }
        }
        return false;
    }

    /** Whether little is left once the words that a stranger would try for this person and clinic are taken out. */
    private boolean isOnly(String password, String name, String email) {
        var tried = new HashSet<>(ourWords);
        tried.addAll(words(name));
        tried.addAll(words(email));
        var left = password;
        for (var word : List.copyOf(tried).stream()
                .sorted((a, b) -> b.length() - a.length())
                .toList()) {
            left = left.replace(word, "");
        }
        return left.length() < password.length()
                && NOT_A_LETTER.matcher(left).replaceAll("").length() < 4;
    }
}
