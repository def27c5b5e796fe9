package org.hearthway.choosing.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import org.hearthway.choosing.Talk;
import org.hearthway.choosing.engine.Guide;
import org.hearthway.choosing.engine.Line;
import org.hearthway.choosing.engine.Mark;
import org.hearthway.choosing.engine.Truth;
import org.hearthway.parts.Tags;

/** What is said about one path: its lines with mark, word and source, and what change is usual. */
final class PathSheet extends Section {

    private final transient Telling say;

    PathSheet(Telling say, Talk.OnPath path) {
        this.say = say;
        var guide = path.guide();
        addClassNames("hw-sheet", "u-edged", "hw-choice-path");
        setId("path-" + guide.id());
        getElement().setAttribute("aria-label", say.in(guide.name()));
        add(Tags.h2("u-xl", say.in(guide.name())));
        var list = new UnorderedList();
        list.addClassName("hw-choice-lines");
        path.lines().forEach(line -> list.add(line(line.mark(), words(line), line.source())));
        guide.points().forEach(point -> list.add(line(Mark.TALK, say.in(point.says()), point.source())));
        add(list, change(guide.change(), path));
    }

    /** A mark with its word, for the legend and for each line. */
    static Component mark(Telling say, Mark mark) {
        var cell = Tags.span("hw-cell", MarkPicture.of(mark));
        cell.add(Tags.span("", say.say("choosing.mark." + mark)));
        return cell;
    }

    private ListItem line(Mark mark, String words, String source) {
        var item = new ListItem(mark(say, mark));
        item.add(Tags.div("", Tags.span("hw-choice-says", words), Tags.span("hw-sub", say.source(source))));
        return item;
    }

    private String words(Line line) {
        return line.holds()
                .map(holds -> say.in(holds.says()))
                .orElseGet(() -> say.say("choosing.not-known", say.names(line.missing())));
    }

    private Component change(Guide.Change change, Talk.OnPath path) {
        var box = Tags.div("hw-choice-change");
        box.add(Tags.span("hw-b", say.say("choosing.change")));
        if (path.change() == Truth.UNKNOWN) {
            box.add(Tags.span(
                    "",
                    say.say("choosing.change.unknown", say.names(change.shown().facts()))));
            return box;
        }
        if (path.change() == Truth.YES) {
            box.add(
                    Tags.span("", say.in(change.says().says())),
                    Tags.span("", say.in(change.beside().says())));
        } else {
            box.add(Tags.span("", say.in(change.otherwise().says())));
        }
        box.add(Tags.span("hw-sub", say.source(change.source())));
        return box;
    }
}
