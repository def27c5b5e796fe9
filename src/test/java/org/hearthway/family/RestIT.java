package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.hearthway.browser.Browser;
import org.hearthway.browser.RunningClinic;
import org.hearthway.browser.WalkOrder;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;

/** A father's child falls ill: the exercises rest, nobody asks for them, and a press brings them back. */
@Order(WalkOrder.SHARED)
@ResourceLock(RunningClinic.SHARED)
class RestIT {

    @Test
    void aFamilyLetsTheExercisesRestAndGoesOn() {
        try (var phone = Browser.phone(RunningClinic.shared())) {
            phone.open("/sign-in")
                    .type("Email", "marisol@family.example")
                    .type("Password", "lantern on the porch step")
                    .pressAt("main form button[type=submit]")
                    .waitFor("Today", () -> phone.path().endsWith("/today"));
            var today = phone.path();
            var week = today.replace("/today", "/week");
            phone.open(week).press("¿Enfermedad o viaje?").see("Dejar descansar los ejercicios");
            phone.press("Dejarlos descansar").see("Elegir por qué.");
            phone.press("Enfermedad").type("Unas palabras", "fiebre desde anoche");
            phone.fitsItsWidth("the page to rest").accessible("the page to rest");
            phone.picture(Path.of("target", "screens", "rest-form-390.png"));
            phone.press("Dejarlos descansar").see("Los ejercicios descansan hasta que la familia lo diga.");
            phone.open(today).see("Los ejercicios descansan");
            phone.picture(Path.of("target", "screens", "rest-today-390.png"));
            assertThat(phone.text()).doesNotContain("minutos por hacer");
            phone.press("Cambiar esto").press("Seguir hoy").see("Los ejercicios siguen");
            phone.seeNoMore("fiebre desde anoche");
            phone.open(today).seeNoMore("Los ejercicios descansan");
        }
    }
}
