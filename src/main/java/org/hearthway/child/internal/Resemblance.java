package org.hearthway.child.internal;

import java.text.Normalizer;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Names;

/**
 * Whether two entries may be one child. Names are compared word by word without accents, hyphens, order or case, since
 * the same two surnames are written in many ways; one slip of the keyboard is forgiven in words of five letters or more.
 */
final class Resemblance {

    private static final int LONG_ENOUGH_FOR_A_SLIP = 5;

    private Resemblance() {}

    static Set<ChildRegister.Likeness> between(ChildData one, ChildData other) {
        var why = EnumSet.noneOf(ChildRegister.Likeness.class);
        var sameSurname = share(surnames(one.names()), surnames(other.names()), Resemblance::almost);
        if (!sameSurname) {
            return why;
        }
        var sameGiven = share(given(one.names()), given(other.names()), Resemblance::almost);
        var sameDay = one.birthDate().equals(other.birthDate());
        if (sameDay) {
            why.add(
                    sameGiven
                            ? ChildRegister.Likeness.NAME_AND_BIRTH_DATE
                            : ChildRegister.Likeness.SURNAME_AND_BIRTH_DATE);
        } else if (sameGiven && isNear(one.birthDate(), other.birthDate())) {
            why.add(ChildRegister.Likeness.NAME_AND_NEAR_BIRTH_DATE);
        }
        return why;
    }

    private static Set<String> given(Names names) {
        return words(names.used(), names.given());
    }

    private static Set<String> surnames(Names names) {
        return words(names.surname(), names.secondSurname());
    }

    private static Set<String> words(String... texts) {
        return Stream.of(texts)
                .map(text -> Normalizer.normalize(text, Normalizer.Form.NFD)
                        .replaceAll("\\p{M}", "")
                        .toLowerCase(Locale.ROOT))
                .flatMap(text -> Arrays.stream(text.split("[^\\p{L}]+")))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.toSet());
    }

    private static boolean share(Set<String> ones, Set<String> others, BiPredicate<String, String> same) {
        return ones.stream().anyMatch(one -> others.stream().anyMatch(other -> same.test(one, other)));
    }

    private static boolean almost(String one, String other) {
        return one.equals(other)
                || (Math.min(one.length(), other.length()) >= LONG_ENOUGH_FOR_A_SLIP
                        && new LevenshteinDistance(1).apply(one, other) >= 0);
    }

    /** Day and month exchanged, or one digit of the date wrong. */
    private static boolean isNear(LocalDate one, LocalDate other) {
        var exchanged = one.getYear() == other.getYear()
                && one.getMonthValue() == other.getDayOfMonth()
                && one.getDayOfMonth() == other.getMonthValue();
        return exchanged || digitsApart(one.toString(), other.toString()) == 1;
    }

    private static long digitsApart(String one, String other) {
        return java.util.stream.IntStream.range(0, Math.min(one.length(), other.length()))
                .filter(i -> one.charAt(i) != other.charAt(i))
                .count();
    }
}
