package org.hearthway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Optional;
import org.hearthway.audit.WhatChanged.Told;
import org.hearthway.base.ChildId;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.support.TransactionTemplate;

@HearthwayTest
class WhatChangedTests {

    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);
    private static final LocalDateTime TUESDAY = LocalDateTime.of(2026, 3, 24, 10, 30);

    @Autowired
    private WhatChanged changed;

    @Autowired
    private Visits visits;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private TransactionTemplate inTransaction;

    @Autowired
    private SettableClock clock;

    private ChildId child = ChildId.random();

    @BeforeEach
    void aChild() {
        child = Children.enter(register);
    }

    @AfterEach
    void backToTheStart() {
        clock.set(HearthwayTest.START);
    }

    private VisitId book() {
        return visits.book(DESK, child, new Visits.Booking("therapy", TUESDAY, 45, "", Optional.empty()));
    }

    @Test
    void tellsAChangeInBothLanguagesOfTheFamily() {
        book();

        assertThat(changed.since(DESK, child, Instant.EPOCH)).singleElement().satisfies(told -> {
            assertThat(told.at()).isEqualTo(HearthwayTest.START);
            assertThat(told.words().en()).contains("Mar 24", "10:30");
            assertThat(told.words().es()).contains("24 de mar", "10:30");
        });
    }

    @Test
    void tellsTheNewestFirstAndOnlyWhatCameAfterTheMoment() {
        var visit = book();
        clock.advance(Duration.ofMinutes(5));
        visits.move(DESK, visit, TUESDAY.plusDays(1), 1);

        assertThat(changed.since(DESK, child, Instant.EPOCH))
                .extracting(Told::at)
                .containsExactly(HearthwayTest.START.plusSeconds(300), HearthwayTest.START);
        assertThat(changed.since(DESK, child, HearthwayTest.START)).hasSize(1);
        assertThat(changed.since(DESK, child, clock.instant())).isEmpty();
    }

    /** What a family did itself is no news to it. */
    @Test
    void saysNothingOfAnAnswerOfTheFamily() {
        var visit = book();
        visits.confirm(Children.caregiver(households, child, Reach.FULL), visit, 0);

        assertThat(changed.since(DESK, child, Instant.EPOCH)).hasSize(1);
    }

    @Test
    void tellsNothingOfAChangeThatWasNotKept() {
        assertThatThrownBy(() -> inTransaction.executeWithoutResult(status -> {
                    book();
                    assertThat(changed.since(DESK, child, Instant.EPOCH)).hasSize(1);
                    throw new IllegalStateException("before the commit");
                }))
                .hasMessage("before the commit");

        assertThat(changed.since(DESK, child, Instant.EPOCH)).isEmpty();
    }

    @Test
    void tellsTheChildsOwnPeopleOnly() {
        book();
        var other = Children.enter(register);

        assertThat(changed.since(Children.caregiver(households, child, Reach.VIEW_ONLY), child, Instant.EPOCH))
                .hasSize(1);
        assertThat(changed.since(DESK, other, Instant.EPOCH)).isEmpty();
        var stranger = Children.caregiver(households, other, Reach.FULL);
        assertThatThrownBy(() -> changed.since(stranger, child, Instant.EPOCH)).isInstanceOf(NotAvailable.class);
    }
}
