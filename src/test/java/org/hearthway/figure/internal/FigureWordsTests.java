package org.hearthway.figure.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.hearthway.base.Language;
import org.hearthway.figure.Figures;
import org.junit.jupiter.api.Test;

/** What those hear who do not see the picture. */
class FigureWordsTests {

    private static final Figures FIGURES = ShippedFigures.all();

    private static String english(String id, boolean left) {
        return FIGURES.named(id).words(Language.EN, left);
    }

    @Test
    void sayWhereTheChildIsAndWhatMoves() {
        assertThat(english("hamstring-helper", false))
                .isEqualTo("Child lying on the back on a mat. Right side: bends at the hip."
                        + " A grown-up helper holds and guides.");
        assertThat(FIGURES.named("hamstring-helper").words(Language.ES, false))
                .isEqualTo("Niño o niña boca arriba en una colchoneta. Lado derecho: dobla la cadera."
                        + " Una persona adulta sostiene y guía.");
    }

    @Test
    void changeSidesWithThePicture() {
        assertThat(english("side-lying-abduction", false))
                .contains("lying on the left side", "Right side: the leg moves out to the side");
        assertThat(english("side-lying-abduction", true))
                .contains("lying on the right side", "Left side: the leg moves out to the side");
        assertThat(english("seated-trunk-reach", false)).contains("Leans to the right");
        assertThat(english("seated-trunk-reach", true)).contains("Leans to the left");
        assertThat(english("roll-helper", false)).contains("Rolls to the right");
        assertThat(english("roll-helper", true)).contains("Rolls to the left");
    }

    @Test
    void tellBothSidesAsOneAndANewPosture() {
        assertThat(english("bridge", false)).contains("The hips lift up", "Both sides: straightens at the hip");
        assertThat(english("sit-to-stand", false)).contains("Child sitting with a bench. Ends standing.");
    }

    /** Only who lies rolls. */
    @Test
    void sayThatWhoIsUprightTurnsAround() {
        assertThat(english("chair-transfer", false)).contains("Turns around to the right");
        assertThat(english("chair-transfer", true)).contains("Turns around to the left");
        assertThat(FIGURES.named("chair-transfer").words(Language.ES, false)).contains("Gira hacia la derecha");
    }

    /** Nothing bends enough for a word, and yet something is to be done. */
    @Test
    void sayThatTheWeightMoves() {
        assertThat(english("weight-shift-stand", false)).contains("The weight moves to the right");
        assertThat(english("weight-shift-stand", true)).contains("The weight moves to the left");
        assertThat(english("tandem-stand", false)).contains("The body moves forward");
    }

    @Test
    void nameWhatTheChildIsOn() {
        assertThat(english("ball-sit", false)).startsWith("Child sitting on a big ball.");
        assertThat(english("treadmill-walk", false)).startsWith("Child standing on a treadmill.");
        assertThat(english("line-walk", false)).startsWith("Child standing on a line on the floor and at a table.");
    }

    @Test
    void tellOfHandsAndOfTheTrunk() {
        assertThat(english("palm-up-helper", false)).contains("Right side: the palm turns up");
        assertThat(english("hand-open-helper", true)).contains("Left side: the hand opens");
        assertThat(english("trunk-turn-sit", false)).contains("The trunk turns to the right");
        assertThat(english("trunk-turn-sit", true)).contains("The trunk turns to the left");
        assertThat(english("curl-up", false))
                .contains("Head and shoulders come up")
                .doesNotContain("hips");
        assertThat(english("hip-flexor-edge", false)).contains("lying on the back on a bed");
    }

    @Test
    void markTheSideByTheLettersOfTheLanguage() {
        var kind = new FigureKind();
        org.hearthway.content.ContentReading.shipped(kind);
        var words = new FigureWords(new org.hearthway.words.Words());
        var sheet = kind.find("clam").orElseThrow();
        assertThat(words.marks(sheet, Language.EN, false).side()).hasValue("R");
        assertThat(words.marks(sheet, Language.EN, true).side()).hasValue("L");
        assertThat(words.marks(sheet, Language.ES, false).side()).hasValue("D");
        assertThat(words.marks(sheet, Language.ES, true).side()).hasValue("I");
        assertThat(words.marks(sheet, Language.ES, false).hold()).hasValue("3 s");
        assertThat(words.marks(kind.find("bridge").orElseThrow(), Language.EN, false)
                        .side())
                .isEmpty();
        var frame = kind.find("standing-frame").orElseThrow();
        assertThat(words.marks(frame, Language.EN, false).hold()).hasValue("30 min");
    }
}
