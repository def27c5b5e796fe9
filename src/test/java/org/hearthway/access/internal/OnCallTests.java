package org.hearthway.access.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.hearthway.access.Accounts;
import org.hearthway.access.OnCall;
import org.hearthway.access.OnCall.Order;
import org.hearthway.access.Passwords;
import org.hearthway.base.AccountId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.Team;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.TestPropertySource;

@HearthwayTest
@DirtiesContext
@TestPropertySource(
        properties =
                "spring.datasource.url=jdbc:h2:mem:on-call;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1")
class OnCallTests {

    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);

    @Autowired
    private OnCall onCall;

    @Autowired
    private Accounts accounts;

    @Autowired
    private Passwords passwords;

    @Autowired
    private Words words;

    private AccountId nurse;
    private AccountId physician;

    @BeforeEach
    void aTeam() {
        nurse = Team.member(accounts, passwords, "Nell Somebody", Role.NURSE).account();
        physician = Team.member(accounts, passwords, "Paul Somebody", Role.PHYSICIAN)
                .account();
    }

    private Order order(int minutes, AccountId... people) {
        return new Order(minutes, List.of(people), List.of(people), Optional.empty());
    }

    private long seen() {
        return onCall.now(ADMINISTRATOR).version();
    }

    private Map<String, String> refused(Order order) {
        var told = new java.util.TreeMap<String, String>();
        assertThatThrownBy(() -> onCall.say(ADMINISTRATOR, order, seen()))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        invalid -> invalid.problems().forEach(problem -> {
                            told.put(problem.field(), words.say(Language.EN, problem));
                            assertThat(words.say(Language.ES, problem))
                                    .isNotBlank()
                                    .doesNotContain("{");
                        }));
        return told;
    }

    @Test
    void keepsTheOrderAndWhoSaidIt() {
        var before = seen();
        var said = new Order(20, List.of(nurse, physician), List.of(physician), Optional.of(nurse));
        onCall.say(ADMINISTRATOR, said, before);
        var kept = onCall.now(ADMINISTRATOR);
        assertThat(kept.order()).isEqualTo(said);
        assertThat(kept.saidBy()).contains(ADMINISTRATOR.account());
        assertThat(kept.saidAt()).contains(HearthwayTest.START);
        assertThat(kept.version()).isEqualTo(before + 1);
    }

    @ParameterizedTest
    @ValueSource(ints = {Integer.MIN_VALUE, -1, 0, 4, 121, 10_000, Integer.MAX_VALUE})
    void minutesLieBetweenFiveAndTwoHours(int minutes) {
        assertThat(refused(order(minutes, nurse)))
                .hasEntrySatisfying("minutes", says -> assertThat(says).contains("from 5 to 120"));
        onCall.say(ADMINISTRATOR, order(5, nurse), seen());
        onCall.say(ADMINISTRATOR, order(120, nurse), seen());
    }

    @Test
    void anEmptyOrderIsRefusedForEachOfTheTwo() {
        assertThat(refused(order(15)))
                .containsOnlyKeys("office", "outside")
                .allSatisfy((field, says) -> assertThat(says).contains("Add at least one person"));
    }

    @Test
    void nobodyStandsInAnOrderTwiceAndNotMoreThanTwelve() {
        assertThat(refused(order(15, nurse, nurse)).get("office")).contains("twice");
        var many = new ArrayList<AccountId>();
        for (int i = 0; i < 13; i++) {
            many.add(Team.member(accounts, passwords, "Number " + i, Role.NURSE).account());
        }
        assertThat(refused(order(15, many.toArray(AccountId[]::new))).get("office"))
                .contains("13 people; at most 12");
    }

    @Test
    void whoCannotSignInAnyMoreIsRefusedWithPlaceAndWayOut() {
        accounts.disable(ADMINISTRATOR, physician);
        assertThat(refused(order(15, nurse, physician)).get("outside"))
                .contains("Place 2")
                .contains("let the person in again under People");
        assertThat(refused(new Order(15, List.of(nurse), List.of(nurse), Optional.of(physician))))
                .containsOnlyKeys("missed");
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"CAREGIVER", "ADMINISTRATOR"})
    void whoDoesNotWorkWithTheListIsRefused(Role role) {
        var other = Team.member(accounts, passwords, "Other " + role.name().toLowerCase(Locale.ROOT), role)
                .account();
        assertThat(onCall.able(ADMINISTRATOR)).noneMatch(able -> able.id().equals(other));
        assertThat(refused(order(15, other))).containsKeys("office", "outside");
    }

    @Test
    void aStrangerToTheHouseIsRefused() {
        assertThat(refused(order(15, AccountId.random()))).containsKeys("office", "outside");
    }

    @ParameterizedTest
    @EnumSource(value = Role.class, names = "ADMINISTRATOR", mode = EnumSource.Mode.EXCLUDE)
    void onlyAdministratorsSeeAndSayIt(Role role) {
        var other = People.with(role);
        assertThatThrownBy(() -> onCall.now(other)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> onCall.able(other)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> onCall.say(other, order(15, nurse), 0)).isInstanceOf(NotAvailable.class);
    }

    @Test
    void ofTwoWhoSayItAtOnceOneIsTold() throws Exception {
        var seen = seen();
        assertThatThrownBy(() -> onCall.say(ADMINISTRATOR, order(15, nurse), seen + 1))
                .isInstanceOf(Overtaken.class);
        var pool = Executors.newFixedThreadPool(2);
        try {
            Callable<Boolean> say = () -> {
                try {
                    onCall.say(ADMINISTRATOR, order(30, nurse, physician), seen);
                    return true;
                } catch (Overtaken overtaken) {
                    return false;
                }
            };
            var done = new ArrayList<Boolean>();
            for (var each : pool.invokeAll(List.of(say, say))) {
                done.add(each.get());
            }
            assertThat(done).containsExactlyInAnyOrder(true, false);
        } finally {
            pool.shutdownNow();
        }
        assertThat(seen()).isEqualTo(seen + 1);
        assertThat(onCall.now(ADMINISTRATOR).order()).isEqualTo(order(30, nurse, physician));
    }
}
