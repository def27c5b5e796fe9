package org.hearthway.family;

import com.vaadin.flow.component.HtmlContainer;
import org.hearthway.figure.Figure;
import org.hearthway.figure.Figure.Shown;
import org.hearthway.parts.Still;
import org.hearthway.program.Exercise;

/** Pictures of exercises for a reader: in the reader's language, with the tone of skin chosen for the child. */
final class Pictures {

    private Pictures() {}

    /** The first position; words beside it say what it is. */
    static HtmlContainer start(Reader reader, Figure figure, boolean left) {
        return still(reader, figure, Still.Pose.START, left, "");
    }

    /** The last position; words beside it say what it is. */
    static HtmlContainer end(Reader reader, Exercise exercise, boolean left) {
        return still(reader, exercise.figure(), Still.Pose.END, left, "");
    }

    /** The last position, told in words to whoever does not see it. */
    static HtmlContainer told(Reader reader, Exercise exercise, boolean left) {
        var figure = exercise.figure();
        return still(reader, figure, Still.Pose.END, left, figure.words(reader.language(), left));
    }

    static String moving(Reader reader, Exercise exercise, boolean left) {
        return address(reader, exercise.figure(), Shown.MOVING, left);
    }

    static String startAddress(Reader reader, Exercise exercise, boolean left) {
        return address(reader, exercise.figure(), Shown.START, left);
    }

    static String endAddress(Reader reader, Exercise exercise, boolean left) {
        return address(reader, exercise.figure(), Shown.END, left);
    }

    private static HtmlContainer still(Reader reader, Figure figure, Still.Pose pose, boolean left, String words) {
        var shown = pose == Still.Pose.START ? Shown.START : Shown.END;
        return Still.of(address(reader, figure, shown, left), figure.ratio(), pose, words);
    }

    private static String address(Reader reader, Figure figure, Shown shown, boolean left) {
        return figure.address(shown, left, reader.child().skinTone(), reader.language());
    }
}
