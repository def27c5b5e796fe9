package org.hearthway.program.ui;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.base.Problem;
import org.hearthway.program.Programs.Caution;
import org.hearthway.program.Programs.Draft;
import org.hearthway.program.Programs.KeptDraft;
import org.hearthway.program.Programs.Version;
import org.hearthway.program.engine.ProgramDiff;
import org.hearthway.program.engine.ProgramLine;

/**
 * What one person is writing: the version it started from, the version it is compared with, and the lines. When
 * somebody else saves in between, their version becomes the one compared with, and the lines stay as they are.
 */
final class Editing {

    private static final int UNDO_STEPS = 50;

    private final List<EditedLine> lines = new ArrayList<>();
    private final Deque<Draft> undo = new ArrayDeque<>();
    private LocalDate effective;
    private String reason = "";
    private String toFamily = "";
    private Optional<Version> base;
    private int started;
    private Draft last;

    private Editing(Optional<Version> base, LocalDate today) {
        this.base = base;
        this.started = number();
        this.effective = today;
        base.ifPresent(version -> put(version.lines()));
        this.last = draft();
    }

    /** Begins with the newest version. */
    static Editing of(Optional<Version> latest, LocalDate today) {
        return new Editing(latest, today);
    }

    /** Goes on with a kept draft; a first day that has gone by becomes today. */
    static Editing of(Optional<Version> latest, KeptDraft kept, LocalDate today) {
        var editing = new Editing(latest, today);
        editing.put(kept.draft());
        if (editing.effective.isBefore(today)) {
            editing.effective = today;
        }
        editing.started = kept.seen();
        editing.last = editing.draft();
        return editing;
    }

    private void put(Draft draft) {
        effective = draft.effective();
        reason = draft.reason();
        toFamily = draft.toFamily();
        put(draft.lines());
    }

    private void put(List<ProgramLine> all) {
        var open = lines.stream()
                .filter(EditedLine::isOpen)
                .map(EditedLine::exercise)
                .collect(Collectors.toSet());
        lines.clear();
        all.forEach(this::add);
        lines.forEach(line -> line.open(open.contains(line.exercise())));
    }

    /** The version compared with and saved upon; 0 for none. */
    int number() {
        return base.map(Version::number).orElse(0);
    }

    /** The version the writing started from; another than {@link #number} when somebody saved in between. */
    int started() {
        return started;
    }

    boolean isOvertaken() {
        return started != number();
    }

    /** Somebody else saved: compare with theirs from now on. */
    void overtakenBy(Version theirs) {
        base = Optional.of(theirs);
    }

    Optional<Version> base() {
        return base;
    }

    List<ProgramLine> baseLines() {
        return base.map(Version::lines).orElse(List.of());
    }

    List<EditedLine> lines() {
        return lines;
    }

    LocalDate effective() {
        return effective;
    }

    void effective(LocalDate day) {
        effective = day;
    }

    String reason() {
        return reason;
    }

    void reason(String text) {
        reason = text;
    }

    String toFamily() {
        return toFamily;
    }

    void toFamily(String text) {
        toFamily = text;
    }

    /** What is to be saved: where no reason was given, the word to the family stands as the reason. */
    Draft toSave() {
        return new Draft(effective, programLines(), reason.isBlank() ? toFamily : reason, toFamily);
    }

    /** Lets leave without a reason go where no rule of care asks for it any more. */
    void dropIdleLeaves(List<Caution> cautions) {
        for (int i = 0; i < lines.size(); i++) {
            var index = i;
            lines.get(i)
                    .dropIdleLeaves(cautions.stream()
                            .filter(caution -> caution.line() == index
                                    && caution.care().rule().forbids())
                            .map(caution -> caution.care().rule().tag())
                            .collect(Collectors.toSet()));
        }
    }

    /** What was typed and cannot stand in a program at all. */
    List<Problem> unheld() {
        var problems = new ArrayList<Problem>();
        for (int i = 0; i < lines.size(); i++) {
            problems.addAll(lines.get(i).unheld(i));
        }
        return problems;
    }

    List<ProgramLine> programLines() {
        return lines.stream().map(line -> line.line(effective)).toList();
    }

    /** The lines with every refused one as it was before, or left out when it is new: that is what can come to the family. */
    List<ProgramLine> soundLines(List<Problem> problems) {
        var before = new ArrayList<>(baseLines());
        var sound = new ArrayList<ProgramLine>();
        var now = programLines();
        for (int i = 0; i < now.size(); i++) {
            var line = now.get(i);
            var place = "lines[" + i + "].";
            var was = before.stream()
                    .filter(old -> old.exercise().equals(line.exercise()))
                    .findFirst();
            was.ifPresent(before::remove);
            if (problems.stream().noneMatch(problem -> problem.field().startsWith(place))) {
                sound.add(line);
            } else {
                was.ifPresent(sound::add);
            }
        }
        return sound;
    }

    Draft draft() {
        return new Draft(effective, programLines(), reason, toFamily);
    }

    ProgramDiff diff() {
        return ProgramDiff.between(baseLines(), programLines());
    }

    void add(ProgramLine line) {
        lines.add(new EditedLine(line));
    }

    /** Adds the lines whose exercise is not in the program yet, and says how many. */
    int addMissing(List<ProgramLine> others) {
        var missing = others.stream()
                .filter(other ->
                        lines.stream().noneMatch(line -> line.exercise().equals(other.exercise())))
                .toList();
        missing.forEach(this::add);
        return missing.size();
    }

    void move(EditedLine line, int by) {
        var at = lines.indexOf(line);
        var to = Math.max(0, Math.min(lines.size() - 1, at + by));
        lines.add(to, lines.remove(at));
    }

    /** Notes a change, so that it can be undone. Returns whether anything is different. */
    boolean changed() {
        var now = draft();
        if (now.equals(last)) {
            return false;
        }
        undo.push(last);
        if (undo.size() > UNDO_STEPS) {
            undo.removeLast();
        }
        last = now;
        return true;
    }

    boolean canUndo() {
        return !undo.isEmpty();
    }

    void undo() {
        if (canUndo()) {
            last = undo.pop();
            put(last);
        }
    }
}
