package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.LocalDate;
import java.util.List;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Remark;
import org.hearthway.path.engine.Remark.Answer;

/** For whom a path is usually chosen, each fact with this child's own figure beside it and its source. */
final class AdviceList extends Section {

    AdviceList(StageWords say, String title, List<Remark> remarks, LocalDate today) {
        addClassName("hw-advice");
        getElement().setAttribute("aria-label", title);
        var list = new UnorderedList();
        remarks.forEach(remark -> list.add(item(say, remark, today)));
        add(Tags.div("hw-colh", Tags.h2("", title)), Tags.p("hw-s hw-quiet", say.say("path.advice.hint")), list);
    }

    private static Component item(StageWords say, Remark remark, LocalDate today) {
        var item = new ListItem(Tags.span("", remark.advice().says().in(say.language())));
        if (remark.answer() != Answer.TEAM_JUDGES) {
            item.add(Tags.span("hw-b u-block", own(say, remark, today)));
        }
        item.add(Tags.span(
                "hw-sub u-block",
                say.say("path.advice.source", say.source(remark.advice().source()))));
        return item;
    }

    private static String age(StageWords say, Remark remark, int own, LocalDate day, LocalDate today) {
        return remark.at()
                .map(stage -> say.say(
                        "path.advice.age",
                        own,
                        say.date(day, today),
                        stage.name().in(say.language())))
                .orElseGet(() -> say.say("path.advice.age-today", own));
    }

    /** The child's own figure, and what it means for the talk. */
    private static String own(StageWords say, Remark remark, LocalDate today) {
        if (remark.answer() == Answer.NOT_RECORDED) {
            return say.say("path.advice.level.none");
        }
        var own = remark.own().orElseThrow();
        var figure = remark.on()
                .map(day -> age(say, remark, own, day, today))
                .orElseGet(() -> say.say("path.advice.level", own));
        return remark.answer() == Answer.OUTSIDE ? say.say("path.advice.outside", figure) : figure;
    }
}
