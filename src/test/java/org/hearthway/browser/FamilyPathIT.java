package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.access.Passwords;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.Names;
import org.hearthway.content.SignOff;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Beginning;
import org.hearthway.path.Plans.Change;
import org.hearthway.reminder.Outbox;
import org.hearthway.testing.People;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/** The day of an operation moves, and with it what the family reads, does and is reminded of. */
@Order(WalkOrder.LONG)
class FamilyPathIT {

    private static final Viewer SETUP = new Viewer.Machine("test");
    private static final String PASSWORD = "seven quiet stones by the river";
    private static final Path PICTURES = Path.of("target", "screens", "family-path");
    private static final LocalDate FIRST = LocalDate.of(2026, 4, 14);
    private static final LocalDate SECOND = LocalDate.of(2026, 5, 12);

    private final RunningClinic clinic = RunningClinic.real();
    private ChildId child = ChildId.random();
    private VisitId operation = VisitId.random();

    @BeforeEach
    void aChildWhoseOperationHasADay() {
        var path = plans().pathways().stream()
                .filter(one -> one.id().equals("sdr"))
                .findFirst()
                .orElseThrow();
        clinic.part(SignOff.class).accept(SETUP, List.of(new SignOff.Item("paths", path.id(), path.version())));
        var name = Names.plain("Alder", "Fenwick");
        child = clinic.part(ChildRegister.class)
                .enter(SETUP, ChildData.plain(name, LocalDate.of(2020, 8, 3), Optional.of(3), 2));
        clinic.part(Households.class).link(SETUP, child, account("rowan", Role.CAREGIVER), Reach.FULL);
        account("physician", Role.PHYSICIAN);
        plans().begin(SETUP, child, "sdr", Beginning.INSTEAD, LocalDate.of(2025, 11, 10), "referred by the school");
        plans().apply(SETUP, child, "sdr", new Change.Fix("operation", FIRST), "a bed is free", 1);
        operation = visits().book(
                        SETUP,
                        child,
                        new Visits.Booking(
                                "operation", FIRST.atTime(8, 0), 240, "", Optional.of("sdr/operation/surgery")));
    }

    @AfterEach
    void close() {
        clinic.close();
    }

    private AccountId account(String name, Role role) {
        var invitation = clinic.part(Accounts.class)
                .invite(SETUP, new NewAccount(name, mail(name), "", Set.of(role), Language.EN, People.ZONE));
        var token = invitation.url().substring(invitation.url().lastIndexOf('/') + 1);
        clinic.part(Passwords.class).set(token, PASSWORD);
        return invitation.account();
    }

    private static String mail(String name) {
        return name + "@clinic.example";
    }

    private static Browser signIn(Browser browser, String name) {
        browser.open("/sign-in")
                .type("Email", mail(name))
                .type("Password", PASSWORD)
                .press("Sign in");
        return browser;
    }

    private Plans plans() {
        return clinic.part(Plans.class);
    }

    private Visits visits() {
        return clinic.part(Visits.class);
    }

    private List<Instant> mails() {
        return clinic.part(Outbox.class).of(SETUP, child).stream()
                .filter(message -> message.state() == Outbox.State.PLANNED)
                .map(Outbox.Message::due)
                .sorted()
                .toList();
    }

    private static Instant at(LocalDateTime local) {
        return local.atZone(People.ZONE).toInstant();
    }

    @Test
    void aMovedOperationMovesWhatTheFamilyReadsDoesAndIsRemindedOf() {
        try (var phone = Browser.phone(clinic);
                var desk = Browser.desk(clinic)) {
            clinic.clock().advance(Duration.ofDays(8));
            signIn(phone, "rowan").open("/my/" + child + "/today").see("Where we are");
            clinic.clock().advance(Duration.ofMinutes(1));
            phone.open("/my/" + child + "/path").see("Alder’s path").see("on Tuesday, April 14");
            phone.seeNoMore("changed.").fitsItsWidth("a path").accessible("a path");
            assertThat(phone.all("[aria-current=step]")).hasSize(1);
            assertThat(phone.all("main s")).isEmpty();
            phone.press("Plan who stays with your child in the hospital.").see("Done. Thank you; the clinic sees it.");
            phone.press("Plan who stays with your child in the hospital.").seeNoMore("Thank you");
            phone.picture(PICTURES.resolve("before-390.png"));

            signIn(desk, "physician").open("/staff/child/" + child + "/path?stage=operation");
            desk.press("It happened, or the clinic has fixed it")
                    .type("Day", "5/12/2026")
                    .see("Nothing is saved yet.")
                    .see("moves to Tue, May 12");
            desk.type("Reason, kept with the change", "the bed went to an emergency")
                    .press("Save and tell the family")
                    .see("Saved.");

            phone.open("/my/" + child + "/path")
                    .see("on Tuesday, May 12")
                    .see("dates changed. The old ones are struck out.");
            assertThat(struck(phone)).contains("before: on Tuesday, April 14").hasSizeGreaterThan(3);
            phone.see("This time is from before the change. We will tell you the new one.");
            phone.fitsItsWidth("a path that moved").accessible("a path that moved");
            phone.picture(PICTURES.resolve("moved-390.png"));

            visits().move(
                            SETUP,
                            operation,
                            SECOND.atTime(8, 0),
                            visits().get(SETUP, operation).version());
            phone.open("/my/" + child + "/dates").see("Operation day").see("before: Tuesday, April 14, 8:00 AM");
            phone.accessible("dates that moved").picture(PICTURES.resolve("moved-dates-390.png"));
            assertThat(mails())
                    .isNotEmpty()
                    .allMatch(due -> due.isAfter(at(FIRST.plusWeeks(2).atStartOfDay())));
            phone.open("/my/" + child + "/today").see("Surgery");

            plans().undo(SETUP, child, 3, "a slip", 3);
            phone.open("/my/" + child + "/path").see("on Tuesday, April 14").seeNoMore("struck out");
            assertThat(struck(phone)).noneMatch(words -> words.contains("May 12"));
        }
    }

    private static List<String> struck(Browser phone) {
        return phone.all("main s").stream()
                .map(element -> String.valueOf(element.getDomProperty("textContent")))
                .toList();
    }
}
