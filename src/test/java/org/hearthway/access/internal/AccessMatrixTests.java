package org.hearthway.access.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Helpers;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.Helping;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** AC1: the decision, row by row, against a file that a person can read and argue with. */
@HearthwayTest
class AccessMatrixTests {

    private static final Path FILE = Path.of("src/test/resources/access/matrix.csv");

    private static final LocalDate TODAY = LocalDate.ofInstant(HearthwayTest.START, People.ZONE);
    private static final LocalDate LATER = TODAY.plusDays(30);

    record Row(String who, String relation, Action action, boolean allowed) {}

    @Autowired
    private Gate gate;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Helpers helpers;

    @Autowired
    private SettableClock clock;

    @Autowired
    private AuditTrail trail;

    @Autowired
    private PlatformTransactionManager transactions;

    private static List<Row> rows() throws IOException {
        return Files.readAllLines(FILE).stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split(","))
                .map(c -> new Row(c[0], c[1], Action.valueOf(c[2]), c[3].equals("yes")))
                .toList();
    }

    private static List<String> relations(String who, Action action) {
        if (!action.isAboutAChild()) {
            return List.of("CLINIC");
        }
        if (who.equals("HELPER")) {
            return List.of("HELPING", "PAST_LAST_DAY", "ENDED", "FULL", "OTHER", "NO_CHILD");
        }
        return Set.of("LINK", "MACHINE").contains(who)
                ? List.of("FULL", "OTHER", "NO_CHILD")
                : List.of("FULL", "VIEW_ONLY", "ENDED", "OTHER", "NO_CHILD");
    }

    @Test
    void everyViewerRelationAndActionHasItsRowOnce() throws IOException {
        var viewers =
                new ArrayList<>(Arrays.stream(Role.values()).map(Role::name).toList());
        viewers.addAll(List.of("LINK", "MACHINE"));
        var wanted = viewers.stream()
                .flatMap(who -> Arrays.stream(Action.values())
                        .flatMap(action ->
                                relations(who, action).stream().map(relation -> who + " " + relation + " " + action)))
                .toList();

        var there = rows().stream()
                .map(row -> row.who() + " " + row.relation() + " " + row.action())
                .toList();

        assertThat(there).containsExactlyInAnyOrderElementsOf(wanted);
    }

    @Test
    void theGateAnswersAsEachRowSays() throws IOException {
        var child = Children.enter(register);
        var other = Children.enter(register);
        var wrong = rows().stream()
                .filter(row -> answer(row, child, other) != row.allowed())
                .collect(Collectors.toList());

        assertThat(wrong).isEmpty();
    }

    private boolean answer(Row row, ChildId child, ChildId other) {
        var about = row.relation().equals("NO_CHILD") ? ChildId.random() : child;
        var viewer = viewer(row, row.relation().equals("NO_CHILD") ? other : child, other);
        return row.action().isAboutAChild()
                ? gate.allows(viewer, row.action(), about)
                : gate.allows(viewer, row.action());
    }

    private Viewer viewer(Row row, ChildId child, ChildId other) {
        if (row.who().equals("MACHINE")) {
            return new Viewer.Machine("test");
        }
        if (row.who().equals("LINK")) {
            return new Viewer.LinkHolder(UUID.randomUUID(), row.relation().equals("OTHER") ? other : child);
        }
        var person = People.with(Role.valueOf(row.who()));
        var administrator = People.with(Role.ADMINISTRATOR);
        if (row.who().equals("HELPER")) {
            help(row, child, person);
            return person;
        }
        switch (row.relation()) {
            case "FULL" -> households.link(administrator, child, person.account(), Reach.FULL);
            case "VIEW_ONLY" -> households.link(administrator, child, person.account(), Reach.VIEW_ONLY);
            case "ENDED" -> {
                households.link(administrator, child, person.account(), Reach.FULL);
                households.unlink(administrator, child, person.account());
            }
            default -> {
                // no link
            }
        }
        return person;
    }

    private void help(Row row, ChildId child, Viewer.Person helper) {
        var administrator = People.with(Role.ADMINISTRATOR);
        switch (row.relation()) {
            case "HELPING" -> Helping.until(LATER, helpers, households, child, helper.account());
            case "PAST_LAST_DAY" -> {
                clock.set(HearthwayTest.START.minus(Duration.ofDays(3)));
                Helping.until(TODAY.minusDays(1), helpers, households, child, helper.account());
                clock.set(HearthwayTest.START);
            }
            case "ENDED" -> {
                Helping.until(LATER, helpers, households, child, helper.account());
                helpers.end(administrator, child, helper.account(), 1);
            }
            case "FULL" -> households.link(administrator, child, helper.account(), Reach.FULL);
            default -> {
                // helps nobody
            }
        }
    }

    @Test
    void anotherFamilysChildAndOneThatDoesNotExistGetTheSameAnswer() {
        var child = Children.enter(register);
        var stranger = Children.caregiver(households, Children.enter(register), Reach.FULL);

        var anothers = org.assertj.core.api.Assertions.catchThrowable(() -> register.get(stranger, child));
        var nobodys = org.assertj.core.api.Assertions.catchThrowable(() -> register.get(stranger, ChildId.random()));

        assertThat(anothers).isInstanceOf(NotAvailable.class).hasMessage(nobodys.getMessage());
        assertThat(nobodys).isInstanceOf(NotAvailable.class);
    }

    @Test
    void aRefusalStandsInTheTrailThoughTheRequestRollsBack() {
        var child = Children.enter(register);
        var stranger = People.with(Role.CAREGIVER);

        assertThatThrownBy(() -> new TransactionTemplate(transactions)
                        .executeWithoutResult(request -> register.get(stranger, child)))
                .isInstanceOf(NotAvailable.class);

        assertThat(trail.newest(People.with(Role.ADMINISTRATOR), 20)).anySatisfy(line -> {
            assertThat(line.actor()).isEqualTo(stranger.tag());
            assertThat(line.child()).contains(child);
            assertThat(line.what()).isEqualTo("refused: SEE_FAMILY_PAGES");
        });
    }
}
