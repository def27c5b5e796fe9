package org.hearthway.child.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.ChildId;
import org.hearthway.base.Holding;
import org.hearthway.base.Holdings;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.browser.RunningClinic;
import org.hearthway.child.Child;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Merges;
import org.hearthway.child.Merges.Merged;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.Programs;
import org.hearthway.pump.Pumps;
import org.hearthway.reminder.Outbox;
import org.hearthway.sign.Signs;
import org.hearthway.testing.People;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Two entries become one over the demo's children, who have a past in every feature, and are taken apart again. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MergedClinicTests {

    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);
    private static final Viewer.Person NURSE = People.with(Role.NURSE);
    private static final Viewer.Person COORDINATOR = People.with(Role.COORDINATOR);
    private static final LocalDate BORN = LocalDate.of(2018, 3, 14);
    private static final LocalDate YEARS_AGO = LocalDate.of(2020, 1, 1);

    /** Tables that only grow, and the children themselves. */
    private static final Set<String> OF_NO_FEATURE =
            Set.of("audit_line", "child_version", "child_merge", "child_merge_move");

    private RunningClinic clinic;
    private Merges merges;

    @BeforeAll
    void begin() {
        // nothing happens by itself while two states are compared
        clinic = RunningClinic.demo(
                "hearthway.outbox.loop=false", "hearthway.needs.first=PT1H", "hearthway.on-call.first=PT1H");
        merges = clinic.part(Merges.class);
        var register = clinic.part(ChildRegister.class);
        for (var child : register.all(ADMINISTRATOR)) {
            var data = child.data();
            register.change(
                    ADMINISTRATOR,
                    child.id(),
                    new ChildData(
                            data.names(),
                            BORN,
                            data.gestation(),
                            data.gmfcs(),
                            data.skinTone(),
                            data.allergies(),
                            data.interpreter()),
                    child.version());
        }
        // none hinders by being the newer one
        jdbc().sql("update surveillance_check set done_on = :day")
                .param("day", BORN)
                .update();
    }

    @AfterAll
    void end() {
        clinic.close();
    }

    private List<Child> children() {
        return clinic.part(ChildRegister.class).all(ADMINISTRATOR);
    }

    private ChildId named(String name) {
        return children().stream()
                .filter(child -> child.name().equals(name))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private JdbcClient jdbc() {
        return clinic.part(JdbcClient.class);
    }

    /** Every row of every table but those that only grow, every column. */
    private Map<String, List<String>> stored() {
        var all = new TreeMap<String, List<String>>();
        jdbc()
                .sql("select lower(table_name) from information_schema.tables"
                        + " where table_schema = 'public' and table_type = 'BASE TABLE'")
                .query(String.class)
                .list()
                .stream()
                .filter(table ->
                        !Set.of("audit_line", "child_merge", "child_merge_move").contains(table))
                .forEach(table -> all.put(
                        table,
                        jdbc().sql("select * from " + table).query().listOfRows().stream()
                                .map(row -> new TreeMap<>(row).toString())
                                .sorted()
                                .toList()));
        return all;
    }

    private Merged merge(ChildId stays, ChildId folds) {
        merges.merge(ADMINISTRATOR, stays, merges.preview(ADMINISTRATOR, stays, folds), "Entered twice");
        return merges.standing(ADMINISTRATOR).get(0);
    }

    private void takeBack(Merged merged) {
        merges.takeBack(ADMINISTRATOR, merged.stays(), merged.id(), "Two children after all");
    }

    @Test
    void isTakenBackToTheByteForWhicheverTwo() {
        var before = stored();
        var done = 0;
        var all = children();
        for (var i = 0; i < all.size(); i++) {
            for (var next : new int[] {1, 4}) {
                done += mergeAndTakeBack(all.get(i), all.get((i + next) % all.size()), before);
            }
        }
        assertThat(done).isGreaterThan(12);
    }

    private int mergeAndTakeBack(Child stays, Child folds, Map<String, List<String>> before) {
        if (!merges.preview(ADMINISTRATOR, stays.id(), folds.id()).hindrances().isEmpty()) {
            return 0;
        }
        var merged = merge(stays.id(), folds.id());
        assertThat(stored()).isNotEqualTo(before);
        takeBack(merged);
        var after = stored();
        before.forEach((table, rows) -> assertThat(after.get(table))
                .as(table + " of " + stays.name() + " and " + folds.name())
                .isEqualTo(rows));
        return 1;
    }

    @Test
    void bringsLogsVisitsMessagesAndPeopleToTheOneThatStays() {
        var juno = named("Juno");
        var teo = named("Teo");
        var parent = clinic.part(Households.class).caregivers(NURSE, teo).get(0).account();
        var visits = visits(juno) + visits(teo);
        var entries = entries(juno) + entries(teo);
        var reports = reports(juno) + reports(teo);
        var messages = messages(juno) + messages(teo);
        var fill = clinic.part(Pumps.class).refill(NURSE, teo);
        var program = clinic.part(Programs.class).latest(NURSE, juno);

        var merged = merge(juno, teo);

        assertThat(children()).extracting(Child::name).contains("Juno").doesNotContain("Teo");
        assertThat(visits(juno)).isEqualTo(visits);
        assertThat(entries(juno)).isEqualTo(entries).isGreaterThan(20);
        assertThat(reports(juno)).isEqualTo(reports);
        assertThat(messages(juno)).isEqualTo(messages);
        assertThat(clinic.part(Pumps.class).refill(NURSE, juno)).isEqualTo(fill).isPresent();
        assertThat(clinic.part(Pumps.class).refills(NURSE)).containsKey(juno).doesNotContainKey(teo);
        assertThat(clinic.part(Programs.class).latest(NURSE, juno))
                .isEqualTo(program)
                .isPresent();
        assertThat(clinic.part(Households.class).reach(parent, juno)).isPresent();
        assertThat(clinic.part(Households.class).reach(parent, teo)).isEmpty();
        assertThatThrownBy(() -> clinic.part(ChildRegister.class).get(NURSE, teo))
                .isInstanceOf(NotAvailable.class);
        takeBack(merged);
    }

    private int visits(ChildId child) {
        var visits = clinic.part(Visits.class);
        return visits.upcoming(NURSE, child).size()
                + visits.past(NURSE, child, 500).size();
    }

    private int entries(ChildId child) {
        return clinic.part(HomeWeek.class)
                .entries(NURSE, child, YEARS_AGO, YEARS_AGO.plusYears(10))
                .size();
    }

    private int reports(ChildId child) {
        return clinic.part(Signs.class).of(NURSE, child).size();
    }

    private int messages(ChildId child) {
        return clinic.part(Outbox.class).of(COORDINATOR, child).size();
    }

    @Test
    void leadsFromTheOldAddressToTheNewOneForWhoeverMaySeeIt() {
        var juno = named("Juno");
        var teo = named("Teo");
        var merged = merge(juno, teo);

        assertThat(merges.goesOnAs(NURSE, teo)).contains(juno);
        assertThat(merges.goesOnAs(NURSE, juno)).isEmpty();
        assertThatThrownBy(() -> merges.goesOnAs(People.with(Role.CAREGIVER), teo))
                .isInstanceOf(NotAvailable.class);
        takeBack(merged);
        assertThat(merges.goesOnAs(NURSE, teo)).isEmpty();
    }

    @Test
    void leavesWhatCameSinceWithTheOneThatStayed() {
        var juno = named("Juno");
        var teo = named("Teo");
        var parent = new Viewer.Person(
                clinic.part(Households.class).caregivers(NURSE, teo).get(0).account(),
                "Parent",
                Set.of(Role.CAREGIVER),
                Language.EN,
                People.ZONE);
        var juno0 = reports(juno);
        var teo0 = reports(teo);
        var merged = merge(juno, teo);
        clinic.part(Signs.class)
                .report(parent, juno, new Signs.ReportData(UUID.randomUUID(), List.of(), false, "We moved house."));

        takeBack(merged);

        assertThat(reports(juno)).isEqualTo(juno0 + 1);
        assertThat(reports(teo)).isEqualTo(teo0);
    }

    @Test
    void isTakenBackInTheOrderInWhichItWasDone() {
        var juno = named("Juno");
        var first = merge(juno, named("Teo"));
        var second = merge(juno, named("Saskia"));

        assertThatThrownBy(() -> takeBack(first)).hasMessageContaining("child.problem.merge.later");
        takeBack(second);
        takeBack(first);
        assertThat(children()).extracting(Child::name).contains("Teo", "Saskia");
    }

    @Test
    void gathersWhatWasWrittenUnderTheOldEntryAtTheVeryMoment() {
        var juno = named("Juno");
        var teo = named("Teo");
        var merged = merge(juno, teo);
        jdbc().sql("insert into sign_report (id, child, called, note, reported_by, reported_at)"
                        + " values (random_uuid(), :child, false, 'late', random_uuid(), now())")
                .param("child", teo.value())
                .update();
        var before = reports(juno);

        clinic.part(Gathering.class).gather();

        assertThat(reports(juno)).isEqualTo(before + 1);
        takeBack(merged);
    }

    @Test
    void knowsEveryTableThatIsKeptOfAChild() {
        var named = clinic.parts(Holdings.class).stream()
                .flatMap(holdings -> holdings.all().stream())
                .map(Holding::tables)
                .flatMap(List::stream)
                .map(Holding.Table::name)
                .collect(Collectors.toCollection(TreeSet::new));
        var there = jdbc().sql("select distinct lower(c.table_name) from information_schema.columns c"
                        + " join information_schema.tables t on t.table_name = c.table_name"
                        + " and t.table_schema = c.table_schema where c.table_schema = 'public'"
                        + " and t.table_type = 'BASE TABLE' and lower(c.column_name) in ('child', 'child_id')")
                .query(String.class)
                .set();
        there.removeAll(OF_NO_FEATURE);

        assertThat(named).containsExactlyInAnyOrderElementsOf(there);
    }
}
