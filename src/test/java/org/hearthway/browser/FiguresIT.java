package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.hearthway.base.Language;
import org.hearthway.figure.Figure.Shown;
import org.hearthway.figure.Figures;
import org.hearthway.figure.internal.ShippedFigures;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The drawn exercises in a real browser. */
class FiguresIT {

    private static final String MOVING = "hw-moving-figure svg.hw-fig";

    private static final String SHEET = """
            document.body.innerHTML = '';
            document.body.style.cssText = 'display:grid;grid-template-columns:repeat(8,1fr);gap:8px;padding:8px;'
              + 'background:#F7F2E9';
            for (const figure of arguments[0]) {
              const place = document.createElement('figure');
              place.style.cssText = 'margin:0;background:#F1E8DA;border-radius:8px;padding:4px';
              for (const address of [figure.start, figure.end]) {
                const image = new Image();
                image.src = '/' + address;
                image.style.cssText = 'width:50%;height:220px;object-fit:contain;display:inline-block';
                place.append(image);
              }
              place.append(figure.name);
              document.body.append(place);
            }
            """;

    /** WCAG 2.2.2: what moves by itself for more than five seconds can be paused. */
    @Test
    void moveWhereAnExerciseIsOpenedUntilTheyArePaused() {
        try (var clinic = RunningClinic.demo();
                var phone = Browser.phone(clinic)) {
            var page = "/my/" + new Tour(clinic).child("Juno") + "/exercise/bridge";
            Tour.signIn(phone, Tour.Person.PARENT.mail).open(page).see("Show me");
            assertThat(phone.all(MOVING)).as("where motion is not wanted").isEmpty();
            phone.inMotion().open(page);
            phone.waitFor("the moving figure", () -> !phone.all(MOVING).isEmpty());
            assertThat(isPaused(phone)).isFalse();
            phone.press("Pause").see("Play");
            assertThat(isPaused(phone)).isTrue();
            phone.accessible("an exercise in motion").fitsItsWidth("an exercise in motion");
            phone.press("Play").see("Pause");
            assertThat(isPaused(phone)).isFalse();
        }
    }

    /** An author sees what is wrong, what is beyond the norm and what is drawn; nothing is kept. */
    @Test
    void areTriedByTheirAuthorsAsTheyType() {
        try (var clinic = RunningClinic.demo();
                var desk = Browser.desk(clinic)) {
            var page = "/staff/clinic/figures?figure=hamstring-helper";
            Tour.signIn(desk, Tour.Person.ADMINISTRATOR.mail)
                    .open("/staff/clinic")
                    .press("Pictures");
            desk.open(page).see("Nothing stands against this file.").see("Mirrored, left");
            assertThat(desk.all(".hw-try-side")).hasSize(2);
            var file = desk.value("File");
            desk.type("File", file.replace("hip: 76", "hip: 176"))
                    .see("Line 16:")
                    .see("\"hip\" is 176, expected -28 to 140 degrees")
                    .see("The pictures show the last text that could be drawn.");
            desk.accessible("a picture's file with a mistake", false).picture(picture("figures-refused"));
            desk.type("File", file.replace("hip: 76", "hip: 138"))
                    .see("Right side: hip flexion 138°. At 2 to 8 years the norm is 131°.")
                    .see("Nothing stands against this file.");
            desk.accessible("a picture's file beyond the norm").picture(picture("figures-beyond"));
            desk.resize(390, 844, false);
            desk.fitsItsWidth("a picture's file on a phone").picture(picture("figures-390"));
            assertThat(desk.reload().value("File")).as("nothing is kept").isEqualTo(file);
            desk.inMotion().open(page);
            desk.waitFor("both sides in motion", () -> desk.all(MOVING).size() == 2);
        }
    }

    private static Path picture(String name) {
        return Path.of("target", "screens", name + ".png");
    }

    private static boolean isPaused(Browser phone) {
        return Boolean.TRUE.equals(phone.run("return document.querySelector('" + MOVING + "').animationsPaused()"));
    }

    /** All of them on one sheet, as {@code target/screens/figures.png}: {@code mvn -Pscreens verify}. */
    @Test
    @Tag("screens")
    void areAllDrawnOnOneSheet() {
        try (var clinic = RunningClinic.demo();
                var desk = Browser.desk(clinic)) {
            int rows = (ShippedFigures.sheets().size() + 7) / 8;
            desk.resize(2880, rows * 268 + 16, false);
            desk.open("/sign-in");
            var figures = clinic.part(Figures.class);
            var sheet = ShippedFigures.sheets().stream()
                    .map(one -> figures.named(one.id()))
                    .map(figure -> Map.of(
                            "name", figure.id(),
                            "start", figure.address(Shown.START, false, 0, Language.EN),
                            "end", figure.address(Shown.END, false, 0, Language.EN)))
                    .toList();
            desk.run(SHEET, sheet);
            desk.waitFor(
                    "all pictures",
                    () -> Boolean.TRUE.equals(
                            desk.run("return [...document.images].every(i => i.complete && i.naturalWidth > 0)")));
            desk.picture(Path.of("target", "screens", "figures.png"));
        }
    }
}
