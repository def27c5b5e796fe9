package org.hearthway.access.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextArea;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hearthway.access.Account;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Safeguarding.Flag;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** The safeguarding flag of a child. Made for named staff alone: for anybody else the page has no such place. */
final class SafeguardingSheet extends Div {

    private final transient HomesPanel.Parts parts;
    private final transient Viewer.Person viewer;
    private final transient ChildId child;
    private final Language language;

    SafeguardingSheet(HomesPanel.Parts parts, Viewer.Person viewer, ChildId child) {
        this.parts = parts;
        this.viewer = viewer;
        this.child = child;
        this.language = viewer.language();
        addClassNames("hw-sheet", "hw-side-form", "hw-safeguarding");
        draw();
    }

    private void draw() {
        removeAll();
        var all = parts.safeguarding().of(viewer, child);
        var raised = !all.isEmpty() && all.get(0).raised();
        long seen = all.isEmpty() ? 0 : all.get(0).number();
        add(
                Tags.h2("", say("access.safeguarding.title")),
                Tags.div(
                        "hw-banner",
                        Icon.LOCK.draw(),
                        Tags.p("", say(raised ? "access.safeguarding.raised" : "access.safeguarding.none"))),
                Tags.p("hw-sub", say("access.safeguarding.who")));
        all.forEach(flag -> add(line(flag)));
        var words = new TextArea(say(raised ? "access.safeguarding.why-lower" : "access.safeguarding.why"));
        words.setId("safeguarding-words");
        var save = Tags.button(
                raised ? "plain wide" : "main wide",
                say(raised ? "access.safeguarding.lower" : "access.safeguarding.raise"),
                pressed -> save(words, !raised, seen));
        save.setId("safeguarding-save");
        add(words, save);
    }

    private Div line(Flag flag) {
        return Tags.div(
                "hw-helper",
                Tags.div(
                        "",
                        Tags.p(
                                "hw-sub",
                                say(
                                        flag.raised() ? "access.safeguarding.by" : "access.safeguarding.lowered-by",
                                        name(flag),
                                        parts.words()
                                                .dateWithYear(
                                                        language,
                                                        LocalDate.ofInstant(
                                                                flag.at(),
                                                                parts.clinic().zone())))),
                        Tags.p("hw-own-words", flag.words())));
    }

    private String name(Flag flag) {
        return parts.accounts().byId(viewer, List.of(flag.by())).values().stream()
                .map(Account::name)
                .findFirst()
                .orElse("");
    }

    private void save(TextArea words, boolean raised, long seen) {
        try {
            parts.safeguarding().say(viewer, child, raised, words.getValue(), seen);
            draw();
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), Map.of("words", words), parts.words(), language);
        } catch (Overtaken overtaken) {
            Told.couldNot(say("access.overtaken"));
        }
    }

    private String say(String key, Object... args) {
        return parts.words().say(language, key, args);
    }
}
