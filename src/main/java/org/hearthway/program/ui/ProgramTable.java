package org.hearthway.program.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Problem;
import org.hearthway.parts.Keys;
import org.hearthway.program.Programs.Caution;
import org.hearthway.program.engine.ProgramLine;

/** The table of a program: one line an exercise, and always one more to add another. */
final class ProgramTable extends Div implements LineRow.Acts {

    /** What the table asks of its page. */
    interface Acts extends AddRow.Acts {
        /** Something typed is different. */
        void changed();
    }

    private static final int COLUMNS = 9;

    private final transient Say say;
    private final transient Editing editing;
    private final transient Acts acts;
    private final transient LastDays last;
    private final NativeTable table = new NativeTable();
    private final transient About about;
    private final List<LineRow> rows = new ArrayList<>();
    private final Map<LineRow, LineDetails> details = new HashMap<>();
    private final AddRow addRow;

    ProgramTable(Say say, Editing editing, Acts acts, LastDays last, About about) {
        this.say = say;
        this.editing = editing;
        this.acts = acts;
        this.last = last;
        this.about = about;
        this.addRow = new AddRow(say, acts, say.library().pace(), about, COLUMNS);
        addClassNames("hw-scroll", "hw-prog-box");
        table.addClassNames("hw-table", "hw-prog");
        table.getHead().add(head());
        add(table);
        draw();
    }

    private NativeTableRow head() {
        var row = new NativeTableRow();
        row.add(hidden("table.order"));
        var exercise = header("table.exercise.order", "");
        exercise.getElement().setAttribute("colspan", "2");
        row.add(
                exercise,
                header("table.dose", ""),
                header("table.days", ""),
                header("table.last", ""),
                header("table.pain", "r"),
                header("table.minutes", "r"),
                hidden("table.more"));
        return row;
    }

    private NativeTableHeaderCell header(String key, String classes) {
        var cell = new NativeTableHeaderCell(say.say(key));
        cell.getElement().setAttribute("scope", "col");
        if (!classes.isEmpty()) {
            cell.addClassName(classes);
        }
        return cell;
    }

    private NativeTableHeaderCell hidden(String key) {
        var cell = new NativeTableHeaderCell();
        var words = new Span(say.say(key));
        words.addClassName("hw-vh");
        cell.add(words);
        cell.getElement().setAttribute("scope", "col");
        return cell;
    }

    /** Draws all lines anew. */
    void draw() {
        var body = table.getBody();
        body.removeAll();
        rows.clear();
        details.clear();
        var lines = editing.lines();
        for (int i = 0; i < lines.size(); i++) {
            var line = lines.get(i);
            var row = new LineRow(
                    say, line, this, say.library().pace(), about, last, "line-" + i, i == 0, i == lines.size() - 1);
            rows.add(row);
            body.add(row);
            if (line.isOpen()) {
                var under = new LineDetails(say, line, this, COLUMNS);
                details.put(row, under);
                body.add(under);
            }
        }
        body.add(addRow, addRow.listRow());
    }

    /** Lets every line follow what is typed. */
    void follow(List<Problem> problems, List<Caution> cautions, Set<String> shown) {
        var diff = editing.diff().lines();
        for (int i = 0; i < rows.size(); i++) {
            var index = i;
            var own = problems.stream()
                    .filter(p -> p.field().startsWith("lines[" + index + "]"))
                    .toList();
            var care = cautions.stream()
                    .filter(c -> c.line() == index)
                    .map(Caution::care)
                    .toList();
            Optional.ofNullable(details.get(rows.get(i))).ifPresent(under -> under.tell(own));
            rows.get(i)
                    .follow(
                            editing.effective(),
                            diff.get(i),
                            own,
                            care,
                            shown.contains(editing.lines().get(i).exercise()));
        }
    }

    void add(ProgramLine line) {
        editing.add(line);
        addRow.clear();
        draw();
        acts.changed();
        Keys.focus(rows.get(rows.size() - 1));
    }

    /** Draws all lines anew and leaves the keys where they were. */
    void drawAgain() {
        draw();
        Keys.back(this);
    }

    @Override
    public void changed() {
        acts.changed();
    }

    @Override
    public void redraw(EditedLine line) {
        draw();
        acts.changed();
        var at = editing.lines().indexOf(line);
        if (at >= 0) {
            Keys.back(rows.get(at));
        }
    }

    @Override
    public void move(EditedLine line, int by) {
        editing.move(line, by);
        redraw(line);
    }

    @Override
    public void takeOut(EditedLine line) {
        var at = editing.lines().indexOf(line);
        editing.lines().remove(line);
        draw();
        acts.changed();
        if (rows.isEmpty()) {
            addRow.focus();
        } else {
            Keys.focus(rows.get(Math.min(at, rows.size() - 1)));
        }
    }
}
