package org.hearthway.access.internal;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.hearthway.base.Problem;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.stereotype.Component;

/**
 * What a password must be: long, and nothing that everybody tries first, nor one or two such words joined. No rule on
 * kinds of characters, no forced change (OWASP ASVS 5.0, 6.2; NIST SP 800-63B-4: 15 characters for a password used
 * alone).
 */
@Component
class PasswordRules {

    static final int SHORTEST = 15;
    static final int LONGEST = 256;

    private static final int FEWEST_SIGNS = 5;
    private static final int OWN_LETTERS = 4;
    private static final Pattern NOT_A_LETTER = Pattern.compile("[^\\p{L}]+");

    private final Set<String> ourWords;

    PasswordRules(ClinicSettings clinic) {
        this.ourWords = words("hearthway " + clinic.name() + " " + clinic.senderName());
    }

    private static Set<String> words(String text) {
        return NOT_A_LETTER
                .splitAsStream(CommonPasswords.lower(text))
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
        var common = CommonPasswords.shipped();
        var bare = CommonPasswords.bare(password);
        if (common.contains(password) || bare.codePoints().distinct().count() < FEWEST_SIGNS || isRepeated(bare)) {
            return problem("access.problem.password-common");
        }
        var ours = new HashSet<>(ourWords);
        ours.addAll(words(name));
        ours.addAll(words(email));
        if (isOnly(CommonPasswords.lower(password), ours)) {
            return problem("access.problem.password-ours");
        }
        return common.makeUp(password, ours) ? problem("access.problem.password-joined") : Optional.empty();
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
    private static boolean isOnly(String password, Set<String> ours) {
        var left = password;
        for (var word : ours.stream().sorted((a, b) -> b.length() - a.length()).toList()) {
            left = left.replace(word, "");
        }
        return left.length() < password.length()
                && NOT_A_LETTER.matcher(left).replaceAll("").length() < OWN_LETTERS;
    }
}
