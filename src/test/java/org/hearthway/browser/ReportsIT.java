package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.content.FamilyText;
import org.hearthway.content.SignOff;
import org.hearthway.sign.Signs;
import org.hearthway.testing.Children;
import org.hearthway.testing.HostileStrings;
import org.hearthway.testing.People;
import org.junit.jupiter.api.Test;

/** A nurse opens a child's folder and reads what the family sent. */
class ReportsIT {

    private static final String PASSWORD = "seven quiet herons walk";

    @Test
    void areReadInTheFolderAsPlainTextAndTheFamilyIsToldBy() {
        try (var clinic = RunningClinic.real();
                var desk = Browser.desk(clinic)) {
            var administrator = People.with(Role.ADMINISTRATOR);
            var child = Children.enter(clinic.part(ChildRegister.class));
            var parent = Children.caregiver(clinic.part(Households.class), child, Households.Reach.FULL);
            var signs = clinic.part(Signs.class);
            var signOff = clinic.part(SignOff.class);
            signOff.accept(
                    administrator,
                    signOff.all(administrator).stream().map(FamilyText::item).toList());
            signs.report(parent, child, report("Since noon, and she is hot.", "pump-itch", "pump-beep-unwell"));
            clinic.clock().advance(Duration.ofMinutes(4));
            var hostile = String.join("\n", HostileStrings.all().limit(6).toList());
            signs.report(parent, child, report(hostile));

            signIn(clinic, desk, administrator);
            desk.open("/staff/child/" + child + "/signs").see("The pump beeps and your child is not well.");
            desk.see("<script>document.title='taken'</script>").see("2 not yet read");
            assertThat(String.valueOf(desk.run("return document.title"))).doesNotContain("taken");
            desk.fitsItsWidth("the reports").accessible("the reports");
            desk.picture(Path.of("target", "screens", "folder-signs-1280.png"));

            desk.press("Mark as read").see("Read by Ada Okoro").see("1 not yet read");
            assertThat(signs.of(parent, child).get(0).read())
                    .hasValueSatisfying(read -> assertThat(read.by()).isEqualTo("Ada Okoro"));

            desk.resize(390, 844, true);
            desk.open("/staff/child/" + child + "/signs").see("Read by Ada Okoro");
            desk.fitsItsWidth("the reports on a phone");
            desk.picture(Path.of("target", "screens", "folder-signs-390.png"));
        }
    }

    private static Signs.ReportData report(String note, String... signs) {
        return new Signs.ReportData(UUID.randomUUID(), List.of(signs), true, note);
    }

    private static void signIn(RunningClinic clinic, Browser desk, Viewer administrator) {
        var invitation = clinic.part(Accounts.class)
                .invite(
                        administrator,
                        new NewAccount(
                                "Ada Okoro", "ada@clinic.example", "", Set.of(Role.NURSE), Language.EN, People.ZONE));
        desk.open(invitation.url()).type("New password", PASSWORD).press("Save my password");
        desk.type("Email", "ada@clinic.example").type("Password", PASSWORD).press("Sign in");
    }
}
