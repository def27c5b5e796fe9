package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;

/** Where the child is on its paths, what is next, and what changed; to take along on paper, too. */
@Route("my/:child/path")
@JsModule("context://offline/unfold.js")
@PermitAll
class PathView extends FamilyPage {

    private final transient FamilyPlans plans;
    private final transient PathNews.Source news;
    private final transient StageNeeds needs;
    private final transient Alongside alongside;
    private final transient ClinicSettings clinic;

    PathView(
            Readers readers,
            FamilyPlans plans,
            PathNews.Source news,
            StageNeeds needs,
            Alongside alongside,
            ClinicSettings clinic) {
        super(readers);
        this.plans = plans;
        this.news = news;
        this.needs = needs;
        this.alongside = alongside;
        this.clinic = clinic;
    }

    @Override
    Place place() {
        return Place.PATH;
    }

    @Override
    String title(Reader reader) {
        return reader.say("family.place.path");
    }

    @Override
    void draw(Reader reader) {
        var all = plans.plans(reader);
        if (all.isEmpty()) {
            add(none(reader));
        } else {
            add(Tags.div("hw-hero u-pb3", Bits.el("h1", "u-2xl", reader.say("family.path.of", reader.name()))));
            var made = reader.words().fullDate(reader.language(), reader.today());
            add(Tags.p("hw-on-paper", reader.say("family.path.as-of", clinic.name(), made)));
            var fresh = news.of(reader);
            var drawn = needs.of(reader, fresh, this::refresh);
            all.forEach(plan -> add(new PathWay(reader, plan, fresh, drawn)));
            add(print(reader));
        }
        alongside.link(reader).ifPresent(link -> add(Tags.div("u-mt5 hw-on-screen", link)));
    }

    private static Component print(Reader reader) {
        return Tags.div(
                "u-mt3 hw-on-screen",
                Tags.button(
                        "plain wide",
                        Icon.PRINT,
                        reader.say("family.path.print"),
                        pressed -> UI.getCurrent().getPage().executeJs("window.print()")));
    }

    private Component none(Reader reader) {
        return plans.isHeldBack(reader)
                ? none(reader, reader.say("family.path.unread"), reader.say("family.path.unread.then"))
                : none(reader, reader.say("family.path.none"), reader.say("family.path.none.then"));
    }

    private static Component none(Reader reader, String title, String then) {
        return Tags.div("", Bits.hero(reader.say("family.path.of", reader.name()), title), Tags.p("u-lead", then));
    }
}
