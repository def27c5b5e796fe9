package org.hearthway.access.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import me.gosimple.nbvcxz.resources.DictionaryUtil;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PasswordRulesTests {

    private final PasswordRules rules = new PasswordRules(new ClinicSettings(
            "Larkmoor Children’s Motion Clinic",
            "Larkmoor Office",
            "office@larkmoor.example",
            ZoneId.of("America/New_York"),
            "555-0100",
            "555-0121",
            "555-0134",
            Set.of(DayOfWeek.MONDAY),
            LocalTime.of(8, 0),
            LocalTime.of(16, 0),
            "https://care.larkmoor.example",
            false));

    private String verdict(String password) {
        return rules.check(password, "Inés Roca", "ines.roca@people.example")
                .map(Problem::key)
                .orElse("taken");
    }

    /** AU1. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "seven quiet lanterns by the river",
                "four words in a row",
                "todos los gatos duermen",
                "no capitals no digits",
                "        eight spaces first",
                "🐢🐢 turtle 🐢 and more 🐢",
                "Kq7#vv1!zzTp0,,",
                "Larkmoor is where the herons nest",
                "a phrase of exactly sixty-four characters, which has to be taken",
                "ñandú caminando despacio"
            })
    void takesLongOnesOfAnyKind(String password) {
        assertThat(verdict(password)).isEqualTo("taken");
    }

    /** AU1. */
    @ParameterizedTest
    @ValueSource(strings = {"", "short", "fourteen chars", "🐢🐢🐢🐢🐢🐢🐢"})
    void refusesShortOnesCountingCharactersAndNotUnits(String password) {
        assertThat(verdict(password)).isEqualTo("access.problem.password-short");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "aaaaaaaaaaaaaaaaaaaa",
                "abababababababababab",
                "abc abc abc abc abc abc",
                "Correct Horse Battery Staple!",
                "PASSWORD-1234567",
                "passwordpasswordpassword"
            })
    void refusesWhatEverybodyTries(String password) {
        assertThat(verdict(password)).isEqualTo("access.problem.password-common");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "HearthwayHearthway1",
                "larkmoor-clinic-2026",
                "ines.roca@people.example",
                "Inés Roca Inés Roca",
                "Childrens Motion Clinic"
            })
    void refusesTheNamesOfThePersonAndTheClinic(String password) {
        assertThat(verdict(password)).isIn("access.problem.password-ours", "access.problem.password-common");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sunshineprincess",
                "Basketball-Player-99",
                "football2026football",
                "password1 password2 password3",
                "P@ssw0rdSunsh1ne",
                "larkmoor princess 1",
                "hearthwaypassword",
                "iloveyou123456789"
            })
    void refusesOneOrTwoCommonOnesJoined(String password) {
        assertThat(verdict(password)).isIn("access.problem.password-joined", "access.problem.password-common");
    }

    /** AU2: whatever of the lists is long enough by itself, as it is and with other capitals and marks. */
    @ParameterizedTest
    @MethodSource("longOnes")
    void refusesEachOfTheListsInAnyCase(String phrase) {
        for (var variant : List.of(
                phrase,
                phrase.toUpperCase(Locale.ROOT),
                phrase.toLowerCase(Locale.ROOT),
                phrase.substring(0, 1).toUpperCase(Locale.ROOT) + phrase.substring(1),
                phrase + "!!")) {
            assertThat(verdict(variant)).as(variant).isEqualTo("access.problem.password-common");
        }
    }

    static Stream<String> longOnes() {
        return Stream.concat(leaked().stream(), ours().stream())
                .filter(entry -> entry.codePointCount(0, entry.length()) >= PasswordRules.SHORTEST);
    }

    private static List<String> ours() {
        try {
            return Files.readAllLines(Path.of("src/main/resources/access/common-passwords.txt")).stream()
                    .filter(line -> !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The leaked ones, the commonest first. */
    private static List<String> leaked() {
        return DictionaryUtil.loadRankedDictionary(DictionaryUtil.passwords).entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .toList();
    }

    /**
     * AU2: of the commonest hardly one is 15 characters long, so each of the first 3000 is brought to the length in the
     * ways that people do: said again, counted on, joined to the next, in capitals.
     */
    @Test
    void refusesTheThreeThousandCommonestHoweverTheyAreBroughtToTheLength() {
        var commonest = leaked().subList(0, 3000);
        var taken = new ArrayList<String>();
        for (int i = 0; i < commonest.size(); i++) {
            var one = commonest.get(i);
            var next = commonest.get((i + 1) % commonest.size());
            var again = one.repeat(1 + PasswordRules.SHORTEST / one.length());
            for (var longer : List.of(
                    again,
                    again.toUpperCase(Locale.ROOT),
                    one + "1234567890123456789".substring(0, PasswordRules.SHORTEST),
                    one + next + "2026" + "!".repeat(PasswordRules.SHORTEST),
                    (one + "-" + next + "-" + one + "-" + next + "-" + one))) {
                if (longer.length() >= PasswordRules.SHORTEST && verdict(longer).equals("taken")) {
                    taken.add(longer);
                }
            }
        }
        assertThat(taken).isEmpty();
    }

    @Test
    void tellsWhyInBothLanguages() {
        var words = new Words();
        for (var password :
                List.of("short", "x".repeat(257), "123456789987654321", "Larkmoor Larkmoor", "sunshineprincess")) {
            var problem = rules.check(password, "Inés Roca", "ines.roca@people.example")
                    .orElseThrow();
            for (var language : Language.values()) {
                assertThat(words.say(language, problem)).hasSizeGreaterThan(20).doesNotContain("access.problem");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {256, 257})
    void takesUpTo256Characters(int length) {
        var password = "seven quiet lanterns ".repeat(20).substring(0, length);
        assertThat(verdict(password)).isEqualTo(length <= 256 ? "taken" : "access.problem.password-long");
    }
}
