package org.hearthway.access.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import java.time.DayOfWeek;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import org.hearthway.access.Circle.Member;
import org.hearthway.base.Language;
import org.hearthway.child.engine.TwoHomes;
import org.hearthway.parts.Tags;

/** Two weeks of nights, each with the home in which the child sleeps; a night that two homes claim is marked. */
final class NightsStrip {

    private static final int DAYS = 14;

    private final HomesPanel.Parts parts;
    private final Language language;
    private final List<Member> members;

    NightsStrip(HomesPanel.Parts parts, Language language, List<Member> members) {
        this.parts = parts;
        this.language = language;
        this.members = members;
    }

    /** The strip; none while there are no two homes to tell apart. */
    Optional<Component> draw(TwoHomes homes) {
        if (!homes.areKnown()) {
            return Optional.empty();
        }
        var words = parts.words();
        var title = words.say(language, "access.homes.two-weeks");
        var today = parts.today();
        var monday = today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        var nights = new OrderedList();
        nights.addClassName("hw-nights");
        var unclear = false;
        for (int i = 0; i < DAYS; i++) {
            var day = monday.plusDays(i);
            var who = homes.on(day);
            unclear |= who.size() != 1;
            var says = switch (who.size()) {
                case 0 -> words.say(language, "access.homes.nobody");
                case 1 -> HomesPanel.names(members, who).split(" ", 2)[0];
                default -> words.say(language, "access.homes.both");
            };
            var item = new ListItem(
                    Tags.span("d", words.shortWeekday(language, day) + " " + day.getDayOfMonth()), Tags.span("", says));
            item.addClassName(who.size() == 1 ? "home" + place(who.get(0)) : "unclear");
            if (day.equals(today)) {
                item.addClassName("now");
            }
            nights.add(item);
        }
        var sheet = Tags.section("hw-sheet hw-nights-sheet", title, Tags.h2("", title), nights);
        if (unclear) {
            sheet.add(Tags.p("hw-s", words.say(language, "access.homes.unclear")));
        }
        return Optional.of(sheet);
    }

    private int place(org.hearthway.base.AccountId who) {
        for (int i = 0; i < members.size(); i++) {
            if (members.get(i).account().equals(who)) {
                return i;
            }
        }
        return 0;
    }
}
