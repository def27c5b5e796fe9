package org.hearthway.desk.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.time.LocalDate;
import org.hearthway.base.Language;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.reminder.Outbox.Message;
import org.hearthway.words.Words;

/** What stands above the desk's list: the title with the lists to choose from, and what the ticked rows have in common. */
final class DeskHead {

    private final Words words;
    private final Language language;
    private final DeskActs acts;

    DeskHead(Words words, Language language, DeskActs acts) {
        this.words = words;
        this.language = language;
        this.acts = acts;
    }

    /** The title. */
    Component[] title(DeskRows rows, LocalDate today) {
        var refresh = Keys.press(Tags.button("text", say("desk.refresh"), pressed -> acts.refresh()), "r");
        refresh.getElement().setAttribute("data-on-return", true);
        return new Component[] {
            Tags.h1(say("desk.title")),
            Tags.span("hw-quiet", words.longDate(language, today)),
            refresh,
            Tags.span("grow", ""),
            lists(rows),
            Keys.press(Tags.button("plain", say("desk.book-any"), pressed -> acts.beginBooking()), "b")
        };
    }

    private Div lists(DeskRows rows) {
        var lists = Tags.div("hw-filters");
        lists.getElement().setAttribute("role", "group").setAttribute("aria-label", say("desk.filters"));
        var key = 0;
        for (var one : DeskShow.values()) {
            key++;
            var chip =
                    Tags.link("hw-chip", DeskView.PLACE + "?show=" + one.inAddress(), say("desk.show." + one.name()));
            chip.getElement()
                    .setAttribute("aria-pressed", String.valueOf(one == rows.show()))
                    .setAttribute("role", "button");
            chip.add(Tags.span("hw-count", String.valueOf(rows.count(one))));
            lists.add(Keys.press(chip, String.valueOf(key)));
        }
        return lists;
    }

    /** What can be done with all ticked rows at once. */
    Div bulk(DeskRows rows) {
        var chosen = rows.chosen();
        var languages = chosen.stream()
                .flatMap(row -> row.message().stream())
                .map(Message::language)
                .distinct()
                .count();
        return Tags.div(
                "hw-bulk",
                Tags.span("hw-b", say("desk.bulk.chosen", chosen.size())),
                Tags.span("u-soft", say("desk.bulk.languages", languages)),
                Tags.span("grow", ""),
                Tags.button("", say("desk.bulk.none"), pressed -> acts.chooseAll(false)),
                Tags.button("", say("desk.hold"), pressed -> acts.hold(rows.chosen(), true)),
                Tags.button("main", say("desk.bulk.send", chosen.size()), pressed -> acts.send(rows.chosen())));
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
