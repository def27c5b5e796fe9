package org.hearthway.access.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.hearthway.access.Circle;
import org.hearthway.access.Circle.Member;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Language;
import org.hearthway.base.Viewer;
import org.hearthway.child.Homes;
import org.hearthway.child.Homes.Authority;
import org.hearthway.child.Homes.Home;
import org.hearthway.child.Safeguarding;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** The homes of a child: who cares for it and how each is reached, the nights, who helps outside the clinic. */
final class HomesPanel extends Div {

    /** What the panel needs of the program. */
    @org.springframework.stereotype.Component
    record Parts(
            Circle circle,
            Homes homes,
            org.hearthway.child.Helpers helpers,
            Safeguarding safeguarding,
            org.hearthway.access.Accounts accounts,
            Gate gate,
            Words words,
            ClinicSettings clinic,
            Clock clock) {

        LocalDate today() {
            return LocalDate.ofInstant(clock.instant(), clinic.zone());
        }
    }

    private final transient Parts parts;
    private final transient Viewer.Person viewer;
    private final transient ChildId child;
    private final Language language;
    private final Div list = Tags.div("hw-homes");
    private final Div beside = Tags.div("hw-homes-side");

    HomesPanel(Parts parts, Viewer.Person viewer, ChildId child) {
        this.parts = parts;
        this.viewer = viewer;
        this.child = child;
        this.language = viewer.language();
        addClassNames("hw-cols", "u-side24", "hw-family-page");
        add(list, beside);
        draw();
    }

    private void draw() {
        list.removeAll();
        beside.removeAll();
        var members = parts.circle().members(viewer, child);
        var may = parts.gate().allows(viewer, Action.LINK_CAREGIVER, child);
        list.add(Tags.div("hw-colh", Tags.h2("", say("access.homes.title")), Tags.span("hw-quiet", remark(members))));
        if (members.isEmpty()) {
            list.add(Tags.p("hw-quiet", say("access.caregivers.none")));
        }
        members.forEach(member -> list.add(card(member, may)));
        new NightsStrip(parts, language, members)
                .draw(parts.homes().nights(viewer, child))
                .ifPresent(list::add);
        if (parts.gate().allows(viewer, Action.SAFEGUARD, child)) {
            beside.add(new SafeguardingSheet(parts, viewer, child));
        }
        beside.add(new HelpersSheet(parts, viewer, child, members));
    }

    private String remark(List<Member> members) {
        return say("access.homes.count", members.size());
    }

    private Component card(Member member, boolean may) {
        var home = member.home().map(Homes.Entered::home).orElse(Home.UNKNOWN);
        var card = Tags.section("hw-sheet hw-home", member.name());
        var head = Tags.div("head", Tags.h2("", member.name()));
        if (!home.relation().isBlank()) {
            head.add(Tags.span("hw-quiet", home.relation()));
        }
        head.add(Tags.span("grow", ""));
        var edit = Tags.button("text hw-word", say("access.homes.edit"), pressed -> edit(card, member));
        edit.getElement().setAttribute("aria-label", say("access.homes.edit") + ": " + member.name());
        if (may) {
            head.add(edit);
        }
        card.add(head, marks(member, home), facts(member, home));
        member.home().filter(entered -> !entered.home().note().isBlank()).ifPresent(entered -> {
            card.add(Tags.div(
                    "note",
                    Tags.p("hw-b", say("access.homes.note.team")),
                    Tags.p("hw-own-words", entered.home().note())));
        });
        member.home()
                .ifPresent(entered -> card.add(Tags.p(
                        "hw-sub",
                        say(
                                "access.homes.entered",
                                new People(parts.accounts()).name(viewer, entered.by()),
                                parts.words()
                                        .dateWithYear(
                                                language,
                                                LocalDate.ofInstant(
                                                        entered.at(),
                                                        parts.clinic().zone()))))));
        return card;
    }

    private void edit(com.vaadin.flow.component.html.Section card, Member member) {
        card.removeAll();
        card.add(new HomeForm(parts, viewer, child, member, this::draw));
    }

    private Component marks(Member member, Home home) {
        var marks = Tags.div("marks");
        marks.add(
                Tags.span("hw-label line", say("access.reach." + member.reach().name())));
        var authority = home.authority();
        marks.add(Tags.span(
                authority == Authority.NO ? "hw-label ember" : "hw-label line",
                say("access.homes.authority." + authority.name())));
        if (home.keptApart()) {
            marks.add(Tags.span("hw-label ember", say("access.homes.apart")));
        }
        if (home.sharesPhone()) {
            marks.add(Tags.span("hw-label line", say("access.homes.shares")));
        }
        return marks;
    }

    private Component facts(Member member, Home home) {
        var facts = Tags.div("facts");
        facts.add(fact(
                "access.homes.phone",
                member.phone().map(HomesPanel::call).orElseGet(() -> Tags.span("hw-quiet", say("access.homes.none")))));
        member.email().ifPresent(email -> facts.add(fact("access.homes.email", Tags.span("", email))));
        facts.add(fact("access.homes.address", told(home.address())));
        member.language()
                .ifPresent(speaks -> facts.add(fact(
                        "access.homes.language",
                        Tags.span("", say("access.language." + speaks.name()) + clock(member)))));
        facts.add(fact(
                "access.homes.interpreter",
                home.interpreter().isBlank()
                        ? Tags.span("hw-quiet", say("access.homes.interpreter.none"))
                        : Tags.span("", home.interpreter())));
        facts.add(fact("access.homes.nights", told(new NightWords(parts.words(), language).of(home.nights()))));
        return facts;
    }

    private String clock(Member member) {
        return member.zone()
                .filter(zone -> !zone.equals(parts.clinic().zone()))
                .map(zone -> " · " + parts.words().zone(language, zone))
                .orElse("");
    }

    private Component told(String text) {
        return text.isBlank() ? Tags.span("hw-quiet", say("access.homes.not-known")) : Tags.span("", text);
    }

    private static Component call(String number) {
        var link = new Anchor("tel:" + number.replaceAll("[^+0-9]", ""));
        link.addClassName("hw-num");
        link.add(Icon.PHONE.draw("sm"), Tags.span("", number));
        return link;
    }

    private Component fact(String key, Component value) {
        return Tags.div("fact", Tags.span("k", say(key)), value);
    }

    private String say(String key, Object... args) {
        return parts.words().say(language, key, args);
    }

    /** The names of those who have a night, in the order of the page. */
    static String names(List<Member> members, List<AccountId> who) {
        return members.stream()
                .filter(member -> who.contains(member.account()))
                .map(Member::name)
                .collect(Collectors.joining(" · "));
    }
}
