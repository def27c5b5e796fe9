package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.Optional;
import org.hearthway.access.Circle;
import org.hearthway.access.Circle.Aide;
import org.hearthway.access.Circle.Member;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Overtaken;
import org.hearthway.child.Helpers;
import org.hearthway.child.Households.Reach;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** Who cares for a child and who helps: names, and a telephone number only where its owner shares it. */
@Route("my/:child/family")
@PermitAll
class CircleView extends FamilyPage {

    private final transient Circle circle;
    private final transient Helpers helpers;
    private final transient Gate gate;
    private final transient ClinicSettings clinic;

    CircleView(Readers readers, Circle circle, Helpers helpers, Gate gate, ClinicSettings clinic) {
        super(readers);
        this.circle = circle;
        this.helpers = helpers;
        this.gate = gate;
        this.clinic = clinic;
    }

    @Override
    Place place() {
        return Place.TODAY;
    }

    @Override
    String title(Reader reader) {
        return reader.say("family.circle.title", reader.name());
    }

    @Override
    Optional<String> below() {
        return Optional.of(title(reader()));
    }

    @Override
    void draw(Reader reader) {
        add(Bits.hero(reader.say("family.notes.about", reader.name()), title(reader)));
        var members = circle.members(reader.viewer(), reader.id());
        var list = Bits.el("ul", "hw-stack u-gap2");
        members.forEach(member -> list.add(person(reader, member)));
        add(list);
        add(Bits.strip("quiet u-mt5", Icon.LOCK, reader.say("family.circle.hidden", clinic.officeLine())));
        helpers(reader);
    }

    private static Component person(Reader reader, Member member) {
        var own = member.account().equals(reader.viewer().account());
        var item = Bits.el("li", "hw-sheet hw-told");
        item.add(Tags.p("hw-b", own ? reader.say("family.circle.you", member.name()) : member.name()));
        var says = member.relation()
                .filter(relation -> !relation.isBlank())
                .map(relation -> reader.large(relation) + " · ")
                .orElse("");
        item.add(Tags.p(
                "hw-s hw-quiet",
                says + reader.say(member.reach() == Reach.FULL ? "family.circle.acts" : "family.circle.looks")));
        if (own) {
            item.add(Tags.p(
                    "hw-s hw-quiet",
                    reader.say("family.circle.own", member.phone().orElse("–"))));
        } else {
            member.phone().ifPresent(phone -> {
                var call = new Anchor("tel:" + phone.replaceAll("[^+0-9]", ""));
                call.addClassNames("hw-button", "plain");
                call.add(Icon.PHONE.draw("sm"), Tags.span("", phone));
                item.add(call);
            });
        }
        return item;
    }

    private void helpers(Reader reader) {
        var may = gate.allows(reader.viewer(), Action.LINK_HELPER, reader.id());
        var all = circle.helpers(reader.viewer(), reader.id());
        add(Tags.h2("hw-h2 u-mt5", reader.say("family.help.title")));
        add(Tags.p("hw-s hw-quiet u-mb3", reader.say("family.help.sees")));
        var list = Bits.el("ul", "hw-stack u-gap2");
        all.forEach(aide -> list.add(helper(reader, aide, may)));
        add(list);
        if (may) {
            add(new HelpForm(reader, circle, this::refresh));
        }
    }

    private Component helper(Reader reader, Aide aide, boolean may) {
        var helper = aide.helper();
        var item = Bits.el("li", "hw-sheet hw-told", Bits.el("p", "hw-b", aide.name()));
        var kind = reader.say("family.help.kind." + helper.help().kind());
        item.add(Tags.p(
                "hw-s",
                helper.over()
                        ? reader.say("family.help.over", kind)
                        : reader.say("family.help.until", kind, helper.help().lastDay())));
        item.add(Tags.p(
                "hw-s hw-quiet",
                reader.say(
                        "family.help.consent",
                        aide.consentBy(),
                        helper.help().consent().on())));
        if (may && !helper.over()) {
            var end = Tags.button("plain", reader.say("family.help.end"), pressed -> {
                try {
                    helpers.end(reader.viewer(), reader.id(), helper.account(), helper.number());
                    Told.done(reader.say("family.help.ended", aide.name()));
                } catch (Overtaken overtaken) {
                    Told.couldNot(reader.say("family.help.overtaken"));
                }
                refresh();
            });
            end.getElement().setAttribute("aria-label", reader.say("family.help.end") + ": " + aide.name());
            item.add(end);
        }
        return item;
    }
}
