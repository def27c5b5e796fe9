package org.hearthway.access.ui;

import com.vaadin.flow.component.html.Div;
import java.util.List;
import java.util.stream.Collectors;
import org.hearthway.base.Language;
import org.hearthway.child.ChildRegister;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** The children that may be the same as the one being entered, and why. */
final class AlikeSheet {

    private final Words words;
    private final Language language;

    AlikeSheet(Words words, Language language) {
        this.words = words;
        this.language = language;
    }

    /**
     * Draws it.
     *
     * @param place address that opens a child with {@code ?child=}
     * @param allTheSame enters the child in spite of this
     */
    Div draw(List<ChildRegister.Alike> known, String place, Runnable allTheSame) {
        var sheet = Tags.div("hw-banner warn", Tags.p("", words.say(language, "access.alike", known.size())));
        sheet.getElement().setAttribute("role", "alert");
        for (var each : known) {
            var why = each.why().stream()
                    .sorted()
                    .map(reason -> words.say(language, "access.alike." + reason.name()))
                    .collect(Collectors.joining(" "));
            sheet.add(Tags.div(
                    "",
                    Tags.link(
                            "kidn",
                            place + "?child=" + each.child().id(),
                            words.say(
                                    language,
                                    "access.alike.child",
                                    each.child().fullName(),
                                    words.dateWithYear(
                                            language, each.child().data().birthDate()))),
                    Tags.span("hw-quiet", " " + why)));
        }
        var enter = Tags.button("plain wide", words.say(language, "access.alike.enter"), pressed -> allTheSame.run());
        enter.setId("child-all-the-same");
        sheet.add(enter);
        return sheet;
    }
}
