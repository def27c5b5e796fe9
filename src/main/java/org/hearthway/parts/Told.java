package org.hearthway.parts;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.component.notification.NotificationVariant;
import java.util.List;
import java.util.Map;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.hearthway.words.Words;

/** Tells a person what happened or what is wrong, beside the field it is about. */
public final class Told {

    private static final int LONG_ENOUGH_TO_READ = 6_000;

    private Told() {}

    /** A short word that something was done. */
    public static void done(String words) {
        var note = Notification.show(words, LONG_ENOUGH_TO_READ, Notification.Position.BOTTOM_CENTER);
        note.addThemeVariants(NotificationVariant.LUMO_CONTRAST);
        note.setAssertive(false);
    }

    /** Something that stays until the person has closed the page or acted: it could not be done. */
    public static void couldNot(String words) {
        var note = Notification.show(words, LONG_ENOUGH_TO_READ * 2, Notification.Position.MIDDLE);
        note.setAssertive(true);
    }

    /**
     * Marks each field with what is wrong with it; what has no field of its own is told as a note.
     *
     * @param fields by the name that problems use; marks of an earlier try are taken off first
     */
    public static void problems(
            List<Problem> problems, Map<String, ? extends HasValidation> fields, Words words, Language language) {
        fields.values().forEach(field -> field.setInvalid(false));
        var focus = true;
        for (var problem : problems) {
            var says = words.say(language, problem);
            var field = fields.get(problem.field());
            if (field == null) {
                couldNot(says);
            } else {
                field.setErrorMessage(says);
                field.setInvalid(true);
                if (focus && field instanceof com.vaadin.flow.component.Focusable<?> first) {
                    first.focus();
                    focus = false;
                }
            }
        }
    }
}
