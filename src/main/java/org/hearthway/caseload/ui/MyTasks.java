package org.hearthway.caseload.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.task.Task;
import org.hearthway.task.TaskWords;
import org.hearthway.words.Words;

/** The tasks of one person of the team over all children, by day, each done with one press. */
final class MyTasks {

    private final Words words;
    private final Viewer.Person viewer;
    private final TaskWords taskWords;
    private final LocalDate today;
    private final Map<ChildId, String> names;

    MyTasks(Words words, Viewer.Person viewer, TaskWords taskWords, LocalDate today, Map<ChildId, String> names) {
        this.words = words;
        this.viewer = viewer;
        this.taskWords = taskWords;
        this.today = today;
        this.names = names;
    }

    Component draw(List<Task> mine, Consumer<Task> done) {
        if (mine.isEmpty()) {
            return Tags.div("hw-sheet hw-empty", Tags.p("hw-quiet", say("caseload.empty.TASKS")));
        }
        var table = new NativeTable();
        table.addClassNames("hw-table", "hw-looks");
        table.getElement().setAttribute("aria-label", say("caseload.show.TASKS"));
        var head = new NativeTableRow();
        for (var column : List.of("kid", "by", "task", "who", "step")) {
            var cell = new NativeTableHeaderCell(say("caseload.column." + column));
            cell.addClassName("c-" + column);
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        }
        table.getHead().add(head);
        mine.forEach(task -> table.getBody().add(row(task, done)));
        table.getBody()
                .getChildren()
                .findFirst()
                .ifPresent(first -> first.getElement().getClassList().add("on"));
        return table;
    }

    private NativeTableRow row(Task task, Consumer<Task> done) {
        var row = Keys.row(new NativeTableRow(), task.id().toString());
        var folder = Keys.press(
                Tags.link(
                        "kidn",
                        "staff/child/" + task.child() + "/tasks",
                        names.getOrDefault(task.child(), say("caseload.folder"))),
                "o");
        var day = words.date(viewer.language(), task.wantedBy());
        var by = task.wantedBy().isBefore(today)
                ? say("caseload.late", day)
                : task.wantedBy().equals(today) ? say("caseload.today") : day;
        var button =
                Keys.press(Tags.button("plain u-step", say("caseload.task.do"), pressed -> done.accept(task)), "c");
        row.add(
                cell("kid", folder),
                cell("by", Tags.span("hw-by", by)),
                cell("why", words(task)),
                cell("who", Tags.span("", taskWords.to(viewer, task.to())), given(task)),
                cell("step", button));
        return row;
    }

    private Component words(Task task) {
        var said = Tags.span("hw-b", task.says().in(viewer.language()));
        said.getElement()
                .setAttribute("lang", task.says().shownIn(viewer.language()).tag());
        return said;
    }

    private Component given(Task task) {
        return Tags.div("hw-sub", Tags.span("", say("caseload.task.given", taskWords.name(viewer, task.givenBy()))));
    }

    private static NativeTableCell cell(String classes, Component... parts) {
        var cell = new NativeTableCell(parts);
        cell.addClassName(classes);
        return cell;
    }

    private String say(String key, Object... args) {
        return words.say(viewer.language(), key, args);
    }
}
