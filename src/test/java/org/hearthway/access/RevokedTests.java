package org.hearthway.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import org.hearthway.base.ChildId;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.program.HomeWeek;
import org.hearthway.sign.Signs;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** AC6 (OWASP ASVS 15.4.2): the check and the act are one transaction; nothing is kept after the right to it ended. */
@HearthwayTest
class RevokedTests {

    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Signs signs;

    @Autowired
    private TransactionTemplate inTransaction;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private HomeWeek week;

    @Autowired
    private Visits visits;

    private ChildId child = ChildId.random();
    private Viewer.Person parent = People.with(Role.CAREGIVER);
    private VisitId visit = VisitId.random();

    @BeforeEach
    void aChildWithAParent() {
        child = Children.enter(register);
        parent = Children.caregiver(households, child, Reach.FULL);
        visit = visits.book(
                People.with(Role.COORDINATOR),
                child,
                new Visits.Booking("therapy", LocalDateTime.of(2026, 3, 24, 10, 30), 45, "", Optional.empty()));
    }

    private void note() {
        signs.report(parent, child, new Signs.ReportData(UUID.randomUUID(), List.of(), false, "a note"));
    }

    private long notes() {
        return jdbc.sql("select count(*) from sign_report where child = ?")
                .param(child.value())
                .query(Long.class)
                .single();
    }

    /** Whether one transaction waits for another; such a one has asked already. */
    private boolean somebodyWaits() {
        return jdbc.sql("select count(*) from information_schema.sessions where blocker_id is not null")
                        .query(Long.class)
                        .single()
                > 0;
    }

    private void untilItWaitsOrIsDone(CompletableFuture<?> other) {
        var end = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
        while (!other.isDone() && !somebodyWaits()) {
            assertThat(System.nanoTime()).as("waited half a minute").isLessThan(end);
            Thread.onSpinWait();
        }
    }

    private void tick() {
        week.log(
                parent,
                child,
                new HomeWeek.Entry(
                        UUID.randomUUID(),
                        "bridge",
                        LocalDate.ofInstant(HearthwayTest.START, People.ZONE),
                        HomeWeek.Outcome.DONE,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        ""));
    }

    private void answer() {
        visits.confirm(parent, visit, 0);
    }

    private List<Runnable> acts() {
        return List.of(this::note, this::tick, this::answer);
    }

    @Test
    void anActThatWaitsForTheEndOfItsRightIsRefused() {
        for (var act : acts()) {
            households.link(ADMINISTRATOR, child, parent.account(), Reach.FULL);
            var acting = new CompletableFuture<Void>();
            inTransaction.executeWithoutResult(status -> {
                households.unlink(ADMINISTRATOR, child, parent.account());
                CompletableFuture.runAsync(act).whenComplete((done, refused) -> {
                    if (refused == null) {
                        acting.complete(null);
                    } else {
                        acting.completeExceptionally(refused.getCause());
                    }
                });
                untilItWaitsOrIsDone(acting);
            });

            assertThatThrownBy(() -> acting.get(30, TimeUnit.SECONDS))
                    .isInstanceOf(ExecutionException.class)
                    .hasCauseInstanceOf(NotAvailable.class);
        }
        assertThat(notes()).isZero();
    }

    @Test
    void aRightEndsOnlyAfterTheActThatReliesOnIt() throws Exception {
        var ending = new CompletableFuture<Void>();
        inTransaction.executeWithoutResult(status -> {
            note();
            CompletableFuture.runAsync(() -> households.unlink(ADMINISTRATOR, child, parent.account()))
                    .thenRun(() -> ending.complete(null));
            untilItWaitsOrIsDone(ending);
            assertThat(ending).isNotDone();
        });

        ending.get(30, TimeUnit.SECONDS);
        assertThat(notes()).isEqualTo(1);
        assertThatThrownBy(this::note).isInstanceOf(NotAvailable.class);
    }
}
