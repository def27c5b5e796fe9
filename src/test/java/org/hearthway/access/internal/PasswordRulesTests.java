package org.hearthway.access.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.hearthway.base.Problem;
import org.hearthway.clinic.ClinicSettings;
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
    @MethodSource("common")
    void refusesEachOfTheListInAnyCase(String phrase) {
        assertThat(verdict(phrase)).isIn("access.problem.password-common", "access.problem.password-short");
        assertThat(verdict(phrase.toUpperCase(Locale.ROOT) + "!!"))
                .isIn("access.problem.password-common", "access.problem.password-short");
    }

    static Stream<String> common() {
        try {
            return Files.readAllLines(Path.of("src/main/resources/access/common-passwords.txt")).stream()
                    .filter(line -> !line.startsWith("#"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {256, 257})
    void takesUpTo256Characters(int length) {
        var password = "seven quiet lanterns ".repeat(20).substring(0, length);
        assertThat(verdict(password)).isEqualTo(length <= 256 ? "taken" : "access.problem.password-long");
    }
}
