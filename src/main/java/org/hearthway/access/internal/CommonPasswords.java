package org.hearthway.access.internal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import me.gosimple.nbvcxz.resources.DictionaryUtil;

/**
 * What everybody tries first: a hundred thousand passwords seen in leaks (the list that the library nbvcxz brings,
 * MIT licence) and phrases of our own list. Few of the former are 15 characters long, so a password is also common when
 * it is nothing but one or two of them, said once or again and again. Nothing is asked over a network.
 */
final class CommonPasswords {

    private static final String PHRASES = "/access/common-passwords.txt";
    /** Shorter pieces stand in every sentence. */
    private static final int SHORTEST_PIECE = 4;
    /** With fewer letters left over, nothing of one's own was added. */
    private static final int OWN_LETTERS = 4;

    private static final Pattern NOT_SAID = Pattern.compile("[^\\p{L}\\p{N}\\p{So}]+");
    private static final Pattern OWN = Pattern.compile("[^\\p{L}\\p{So}]+");
    private static final String GAP = " ";

    /** Read at the first use, which is not at the start of the program. */
    private static final class Shipped {
        private static final CommonPasswords LISTS = new CommonPasswords();
    }

    private final Set<String> all = new HashSet<>();
    private final int longest;

    private CommonPasswords() {
        for (var seen :
                DictionaryUtil.loadRankedDictionary(DictionaryUtil.passwords).keySet()) {
            all.add(bare(seen));
        }
        all.addAll(phrases());
        longest = all.stream().mapToInt(String::length).max().orElse(0);
    }

    static CommonPasswords shipped() {
        return Shipped.LISTS;
    }

    private static List<String> phrases() {
        try (var lines = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(CommonPasswords.class.getResourceAsStream(PHRASES)), StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(CommonPasswords::bare)
                    .filter(line -> !line.isEmpty())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Letters and digits alone, in lower case, so that a stop or a capital does not make a new phrase. */
    static String bare(String text) {
        return NOT_SAID.matcher(lower(text)).replaceAll("");
    }

    /** The same with signs that stand for letters read as those letters. */
    static String read(String text) {
        return bare(lower(text)
                .replace('@', 'a')
                .replace('4', 'a')
                .replace('3', 'e')
                .replace('1', 'i')
                .replace('!', 'i')
                .replace('0', 'o')
                .replace('$', 's')
                .replace('5', 's')
                .replace('7', 't'));
    }

    static String lower(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
    }

    /** Whether it stands on a list as it is. */
    boolean contains(String password) {
        return all.contains(bare(password)) || all.contains(read(password));
    }

    /**
     * Whether it is made of one or two common passwords, or of these words, with too little besides.
     *
     * @param more words that are common for this person and clinic, in lower case
     */
    boolean makeUp(String password, Collection<String> more) {
        return isMadeUp(bare(password), more) || isMadeUp(read(password), more);
    }

    private boolean isMadeUp(String text, Collection<String> more) {
        for (var first : piecesOf(text, more)) {
            var left = text.replace(first, GAP);
            if (isNothing(left)) {
                return true;
            }
            for (var second : piecesOf(left, more)) {
                if (isNothing(left.replace(second, GAP))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isNothing(String left) {
        return OWN.matcher(left).replaceAll("").length() < OWN_LETTERS;
    }

    private Set<String> piecesOf(String text, Collection<String> more) {
        var pieces = new HashSet<String>();
        more.stream().filter(text::contains).forEach(pieces::add);
        for (int from = 0; from < text.length(); from++) {
            for (int to = from + SHORTEST_PIECE; to <= Math.min(text.length(), from + longest); to++) {
                var piece = text.substring(from, to);
                if (all.contains(piece)) {
                    pieces.add(piece);
                }
            }
        }
        return pieces;
    }
}
