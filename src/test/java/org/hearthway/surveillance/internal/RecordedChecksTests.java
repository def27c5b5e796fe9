package org.hearthway.surveillance.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.audit.WhatChanged;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Names;
import org.hearthway.surveillance.Check;
import org.hearthway.surveillance.Check.CheckData;
import org.hearthway.surveillance.Surveillance;
import org.hearthway.surveillance.Surveillance.Outlook;
import org.hearthway.surveillance.engine.Due;
import org.hearthway.surveillance.engine.Watched;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.words.Words;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@HearthwayTest
class RecordedChecksTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final LocalDate FIRST = LocalDate.of(2025, 11, 30);
    private static final Viewer.Person PHYSICIAN = People.with(Role.PHYSICIAN);

    @Autowired
    private Surveillance surveillance;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private WhatChanged changed;

    @Autowired
    private Words words;

    private ChildId child(Optional<Integer> level) {
        return register.enter(
                People.with(Role.ADMINISTRATOR),
                ChildData.plain(Names.plain("Tamsin", "Orbell"), LocalDate.of(2024, 5, 4), level, 2));
    }

    private static CheckData hips(LocalDate day, String left, String right) {
        return new CheckData(
                Watched.HIPS,
                day,
                "Dr. Nwosu, here",
                Optional.of(new BigDecimal(left)),
                Optional.of(new BigDecimal(right)),
                Optional.empty(),
                false,
                "");
    }

    private Outlook outlook(Viewer viewer, ChildId child, Watched watched) {
        return surveillance.outlook(viewer, child).stream()
                .filter(outlook -> outlook.matter().watched() == watched)
                .findFirst()
                .orElseThrow();
    }

    private List<String> ahead(ChildId child) {
        return outlook(PHYSICIAN, child, Watched.HIPS).ahead().stream()
                .map(Due::by)
                .map(LocalDate::toString)
                .toList();
    }

    /** Reference values EX-W1, by the AACPDM Hip Surveillance Care Pathway 2017: the shipped rhythm of level IV. */
    @Test
    void theShippedRhythmOfLevelFourGivesTheReferenceDates() {
        var child = child(Optional.of(4));
        surveillance.record(PHYSICIAN, child, hips(FIRST, "21", "24"), 0);
        assertThat(ahead(child)).containsExactly("2026-05-30", "2026-11-30", "2027-05-30", "2027-11-30", "2028-11-30");
    }

    @Test
    void givesNoDateWhileTheLevelIsNotKnown() {
        var child = child(Optional.empty());
        surveillance.record(PHYSICIAN, child, hips(FIRST, "21", "24"), 0);
        var outlook = outlook(PHYSICIAN, child, Watched.HIPS);
        assertThat(outlook.level()).isEmpty();
        assertThat(outlook.ahead()).isEmpty();
        assertThat(outlook.last()).contains(FIRST);
    }

    /** The published definition: displaced from 30 % on (Australian Hip Surveillance Guidelines 2014, EX-13). */
    @Test
    void aMigrationOfThirtyPercentIsMarkedAndNothingBelowIs() {
        var from = outlook(PHYSICIAN, child(Optional.of(4)), Watched.HIPS)
                .matter()
                .displacedFrom()
                .orElseThrow();
        assertThat(from).isEqualTo(30);
        assertThat(hips(FIRST, "30", "10").reaches(from)).isTrue();
        assertThat(hips(FIRST, "10", "30.1").reaches(from)).isTrue();
        assertThat(hips(FIRST, "29.9", "29.9").reaches(from)).isFalse();
    }

    @Test
    void aCorrectionMovesTheDatesAndACheckThatNeverTookPlaceIsGone() {
        var child = child(Optional.of(4));
        surveillance.record(PHYSICIAN, child, hips(FIRST, "21", "24"), 0);
        surveillance.record(PHYSICIAN, child, hips(TODAY, "22", "24"), 1);
        assertThat(ahead(child)).startsWith("2026-09-12");
        surveillance.correct(PHYSICIAN, child, Watched.HIPS, 2, Optional.of(hips(TODAY.minusDays(2), "22", "24")), 2);
        assertThat(ahead(child)).startsWith("2026-09-10");
        surveillance.correct(PHYSICIAN, child, Watched.HIPS, 2, Optional.empty(), 3);
        assertThat(ahead(child)).startsWith("2026-05-30");
        assertThat(surveillance.checks(PHYSICIAN, child, Watched.HIPS))
                .extracting(Check::number)
                .containsExactly(1L);
        assertThatThrownBy(() -> surveillance.correct(PHYSICIAN, child, Watched.HIPS, 2, Optional.empty(), 4))
                .isInstanceOf(Overtaken.class);
    }

    @Test
    void ofTwoWhoRecordAtOnceTheSecondIsTold() {
        var child = child(Optional.of(4));
        surveillance.record(PHYSICIAN, child, hips(FIRST, "21", "24"), 0);
        assertThatThrownBy(() -> surveillance.record(PHYSICIAN, child, hips(TODAY, "21", "24"), 0))
                .isInstanceOf(Overtaken.class);
        assertThat(surveillance.checks(PHYSICIAN, child, Watched.HIPS)).hasSize(1);
    }

    @Test
    void saysAllThatIsWrongAtOnceAndTheWayOut() {
        var child = child(Optional.of(4));
        var wrong = new CheckData(
                Watched.HIPS,
                TODAY.plusDays(1),
                " ",
                Optional.of(new BigDecimal("100.1")),
                Optional.of(new BigDecimal("20.55")),
                Optional.of(20),
                false,
                "n".repeat(501));
        var refused = catchThrowableOfType(Invalid.class, () -> surveillance.record(PHYSICIAN, child, wrong, 0));
        assertThat(refused.problems())
                .extracting(Problem::field)
                .containsExactly("day", "who", "left", "right", "cobb", "note");
        for (var language : Language.values()) {
            assertThat(refused.problems())
                    .allSatisfy(problem -> assertThat(words.say(language, problem))
                            .isNotBlank()
                            .doesNotContain("{"));
        }
        surveillance.record(PHYSICIAN, child, hips(FIRST, "0", "100"), 0);
        assertThatThrownBy(() -> surveillance.record(PHYSICIAN, child, hips(FIRST, "0", "100"), 1))
                .as("two checks of one day")
                .isInstanceOf(Invalid.class);
        assertThatThrownBy(() -> surveillance.record(PHYSICIAN, child, hips(LocalDate.of(2024, 5, 3), "0", "100"), 1))
                .as("before birth")
                .isInstanceOf(Invalid.class);
    }

    /** A number is never a verdict for a family: what a family may read has none in it. */
    @Test
    void theFamilyReadsDatesAndNoNumber() {
        var child = child(Optional.of(4));
        surveillance.record(PHYSICIAN, child, hips(FIRST, "37", "41"), 0);
        var parent = Children.caregiver(households, child, Households.Reach.FULL);
        assertThatThrownBy(() -> surveillance.checks(parent, child, Watched.HIPS))
                .isInstanceOf(NotAvailable.class);
        assertThat(outlook(parent, child, Watched.HIPS).toString())
                .doesNotContain("37")
                .doesNotContain("41");
        assertThat(changed.since(parent, child, HearthwayTest.START.minusSeconds(1)))
                .anySatisfy(told -> assertThat(told.words().en())
                        .contains("May 30, 2026")
                        .contains("your team confirms it")
                        .doesNotContain("37"));
        assertThat(changed.since(parent, child, HearthwayTest.START.minusSeconds(1)))
                .allSatisfy(told -> assertThat(told.words().es()).doesNotContain("41"));
    }

    @Test
    void onlyThoseWhoReadTheChecksRecordThem() {
        var child = child(Optional.of(4));
        for (var role : List.of(Role.COORDINATOR, Role.ADMINISTRATOR, Role.CAREGIVER)) {
            assertThatThrownBy(() -> surveillance.record(People.with(role), child, hips(FIRST, "1", "1"), 0))
                    .as(role.name())
                    .isInstanceOf(NotAvailable.class);
        }
        surveillance.record(People.with(Role.THERAPIST), child, hips(FIRST, "1", "1"), 0);
        assertThatThrownBy(() -> surveillance.record(new Viewer.Machine("test"), child, hips(TODAY, "1", "1"), 1))
                .as("a check has a person who answers for it")
                .isInstanceOf(NotAvailable.class);
    }

    @Test
    void namesAllChildrenThatHaveADateForTheTeamAlone() {
        var child = child(Optional.of(4));
        var unknown = child(Optional.empty());
        assertThat(surveillance.all(PHYSICIAN)).containsKey(child).doesNotContainKey(unknown);
        assertThatThrownBy(() -> surveillance.all(People.with(Role.CAREGIVER))).isInstanceOf(NotAvailable.class);
    }
}
