package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.parts.Tags;
import org.hearthway.program.StarterSets.StarterSet;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.ProgramLine;

/** What a program may begin from: sets of the clinic, and a program of another child that the person marked for it. */
final class Beginnings extends Div {

    /**
     * A program of another child.
     *
     * @param title says whose, and which version
     * @param lines as that child has them
     */
    record Marked(String title, List<ProgramLine> lines) {}

    /** What the panel asks of its page. */
    interface Acts {
        List<StarterSet> sets();

        /** The program marked for copying, if there is one and the person may still see it. */
        Optional<Marked> marked();

        LocalDate effective();

        /** Adds those lines whose exercise is not in the program yet. */
        void addAll(List<ProgramLine> lines);

        /** Closes the panel. */
        void close();
    }

    private final transient Say say;
    private final transient Acts acts;

    Beginnings(Say say, About about, Acts acts) {
        this.say = say;
        this.acts = acts;
        var list = new UnorderedList();
        list.addClassName("hw-begin");
        acts.marked()
                .ifPresent(marked -> list.add(item(marked.title(), say.say("begin.copy.hint"), fresh(marked.lines()))));
        acts.sets().stream()
                .sorted(Comparator.comparing((StarterSet set) -> !fits(set.levels(), about)))
                .forEach(set -> list.add(item(
                        set.name().in(say.language()),
                        say.say("begin.set", set.about().in(say.language()), levels(set.levels())),
                        set.from(acts.effective()))));
        addClassName("hw-panel");
        getElement().setAttribute("role", "region").setAttribute("aria-label", say.say("begin"));
        add(
                Tags.div(
                        "hw-colh",
                        Tags.h2("", say.say("begin")),
                        Tags.span("grow", ""),
                        Tags.button("text", say.say("begin.close"), pressed -> acts.close())),
                Tags.p("hw-sub", say.say("begin.hint")),
                list);
    }

    private static boolean fits(Set<Integer> levels, About about) {
        return about.level().filter(levels::contains).isPresent();
    }

    private String levels(Set<Integer> levels) {
        return levels.stream()
                .sorted()
                .map(level -> say.exercises().level(say.language(), level))
                .collect(Collectors.joining(", "));
    }

    /** What was agreed with one family, its days, notes and leave from rules of care, is not another's. */
    private List<ProgramLine> fresh(List<ProgramLine> lines) {
        return lines.stream()
                .filter(line -> !say.library().isGone(line.exercise()))
                .map(line -> new ProgramLine(
                        line.exercise(),
                        line.prescription(),
                        line.days(),
                        acts.effective(),
                        Optional.empty(),
                        "",
                        Priority.SECOND,
                        "",
                        List.of()))
                .toList();
    }

    private Component item(String title, String about, List<ProgramLine> lines) {
        var names = lines.stream().map(line -> say.name(line.exercise())).collect(Collectors.joining(" · "));
        var take = Tags.button("plain", say.say("begin.take", lines.size()), pressed -> acts.addAll(lines));
        take.getElement().setAttribute("aria-label", say.say("begin.take.for", title));
        return new ListItem(
                new Div(
                        Tags.span("hw-b u-block", title),
                        Tags.span("hw-sub u-block", about),
                        Tags.span("u-block", names)),
                take);
    }
}
