package org.hearthway.access.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.hearthway.access.Accounts;
import org.hearthway.access.Circle;
import org.hearthway.access.Circle.Member;
import org.hearthway.access.Circle.NewHelper;
import org.hearthway.access.NewAccount;
import org.hearthway.access.internal.CircleTable.Field;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Helpers;
import org.hearthway.child.Helpers.Consent;
import org.hearthway.child.Helpers.Help;
import org.hearthway.child.Helpers.Kind;
import org.hearthway.child.Homes;
import org.hearthway.child.Homes.Authority;
import org.hearthway.child.Homes.Home;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.engine.Nights;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** AC4: what is shown of a caregiver to whom, field by field, against a file that a person can read and argue with. */
@HearthwayTest
class CircleTests {

    private static final Path FILE = Path.of("src/test/resources/access/fields.csv");
    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);
    private static final LocalDate TODAY = LocalDate.ofInstant(HearthwayTest.START, People.ZONE);
    private static final String PHONE = "555-0177";

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Homes homes;

    @Autowired
    private Helpers helpers;

    @Autowired
    private Accounts accounts;

    @Autowired
    private Circle circle;

    private static Home home(boolean shares, boolean apart) {
        return new Home(
                "mother",
                Authority.YES,
                "12 Elder Lane",
                "Spanish",
                Nights.NONE,
                shares,
                apart,
                "They do not speak to each other.");
    }

    private AccountId caregiver(ChildId child, Role... more) {
        var roles = new java.util.HashSet<>(Set.of(more));
        roles.add(Role.CAREGIVER);
        var account = accounts.invite(
                        ADMINISTRATOR,
                        new NewAccount("Rowan Ash", People.freshEmail(), PHONE, roles, Language.ES, People.ZONE))
                .account();
        households.link(ADMINISTRATOR, child, account, Reach.FULL);
        return account;
    }

    private Member seenBy(String who) {
        var child = Children.enter(register);
        var looked = caregiver(child);
        var shares = !who.equals("ANOTHER_CAREGIVER");
        homes.enter(ADMINISTRATOR, child, looked, home(shares, false), 0);
        var viewer = switch (who) {
            case "THE_CAREGIVER_ITSELF" -> People.as(looked, Role.CAREGIVER);
            case "ANOTHER_CAREGIVER", "ANOTHER_CAREGIVER_SHARED_WITH" -> People.as(caregiver(child), Role.CAREGIVER);
            case "ANOTHER_CAREGIVER_KEPT_APART", "A_NURSE_WHO_IS_ANOTHER_CAREGIVER" -> {
                var other = caregiver(child);
                homes.enter(ADMINISTRATOR, child, other, home(true, true), 0);
                yield who.startsWith("A_NURSE")
                        ? People.as(other, Role.CAREGIVER, Role.NURSE)
                        : People.as(other, Role.CAREGIVER);
            }
            default -> People.with(Role.valueOf(who));
        };
        return circle.members(viewer, child).stream()
                .filter(member -> member.account().equals(looked))
                .findFirst()
                .orElseThrow();
    }

    private static boolean shows(Member member, Field field) {
        return switch (field) {
            case RELATION -> member.relation().isPresent();
            case PHONE -> member.phone().isPresent();
            case EMAIL -> member.email().isPresent();
            case LANGUAGE -> member.language().isPresent();
            case ZONE -> member.zone().isPresent();
            case HOME -> member.home().isPresent();
        };
    }

    @Test
    void everyFieldIsShownToWhomTheFileSays() throws IOException {
        var rows = Files.readAllLines(FILE).stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split(","))
                .toList();
        var all = rows.stream().map(row -> row[0]).distinct().toList();
        var wanted = all.stream()
                .flatMap(who -> Arrays.stream(Field.values()).map(field -> who + " " + field))
                .toList();
        assertThat(rows.stream().map(row -> row[0] + " " + row[1]).toList())
                .containsExactlyInAnyOrderElementsOf(wanted);
        assertThat(all).contains("THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR", "ADMINISTRATOR");
        var wrong = new ArrayList<String>();
        for (var who : all) {
            var member = seenBy(who);
            rows.stream()
                    .filter(row -> row[0].equals(who))
                    .filter(row -> shows(member, Field.valueOf(row[1])) != row[2].equals("yes"))
                    .forEach(row -> wanted(wrong, row));
        }
        assertThat(wrong).isEmpty();
    }

    private static void wanted(List<String> wrong, String[] row) {
        wrong.add(String.join(",", row));
    }

    @Test
    void aNurseReadsNothingOfTheOtherHomeOfTheOwnChild() {
        var child = Children.enter(register);
        var other = People.as(caregiver(child, Role.NURSE), Role.CAREGIVER, Role.NURSE);

        assertThatThrownBy(() -> homes.of(other, child)).isInstanceOf(NotAvailable.class);
        assertThat(homes.of(other, Children.enter(register))).isEmpty();
    }

    private Help help(AccountId consentBy) {
        return new Help(Kind.THERAPIST, TODAY.plusDays(30), new Consent(consentBy, TODAY));
    }

    @Test
    void aCaregiverAsksAHelperWhoGetsALinkAndNothingButTheWeek() {
        var child = Children.enter(register);
        var parent = People.as(caregiver(child), Role.CAREGIVER);
        var email = People.freshEmail();

        var link = circle.askToHelp(
                parent, child, new NewHelper("Odile Farrow", email, Language.EN, help(parent.account())));

        var helper = People.as(link.orElseThrow().account(), Role.HELPER);
        assertThat(circle.helpers(parent, child)).singleElement().satisfies(aide -> {
            assertThat(aide.name()).isEqualTo("Odile Farrow");
            assertThat(aide.consentBy()).isEqualTo("Rowan Ash");
            assertThat(aide.helper().help().consent().on()).isEqualTo(TODAY);
        });
        assertThat(helpers.mine(helper)).extracting(Helpers.Glimpse::id).containsExactly(child);
        assertThatThrownBy(() -> circle.members(helper, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> circle.helpers(helper, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> register.get(helper, child)).isInstanceOf(NotAvailable.class);

        var second = Children.enter(register);
        var its = People.as(caregiver(second), Role.CAREGIVER);
        assertThat(circle.askToHelp(
                        its, second, new NewHelper("Odile Farrow", email, Language.EN, help(its.account()))))
                .isEmpty();
        assertThat(helpers.mine(helper)).extracting(Helpers.Glimpse::id).containsExactlyInAnyOrder(child, second);
    }

    @Test
    void refusesAHelperWithEverythingThatIsWrongAtOnce() {
        var child = Children.enter(register);
        var parent = People.as(caregiver(child), Role.CAREGIVER);
        var other = caregiver(child);
        var bad = new Help(Kind.OTHER, TODAY.minusDays(1), new Consent(other, TODAY.plusDays(1)));

        assertThatThrownBy(() -> circle.askToHelp(parent, child, new NewHelper(" ", "nowhere", Language.EN, bad)))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(Problem::field)
                                .containsExactlyInAnyOrder("name", "email", "lastDay", "consentOn", "consentBy"));
    }

    @Test
    void refusesTheAddressOfSomebodyWhoIsNoHelper() {
        var child = Children.enter(register);
        var parent = People.as(caregiver(child), Role.CAREGIVER);
        var email = People.freshEmail();
        accounts.invite(
                ADMINISTRATOR, new NewAccount("Dr. Fern", email, "", Set.of(Role.PHYSICIAN), Language.EN, People.ZONE));

        assertThatThrownBy(() -> circle.askToHelp(
                        parent, child, new NewHelper("Fern", email, Language.EN, help(parent.account()))))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(Problem::field)
                                .containsExactly("email"));
    }
}
