package org.hearthway.desk.ui;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.desk.Board;
import org.hearthway.desk.Board.Row;

/** The rows of the desk on one screen: which are shown, which are ticked, which one is at hand. */
final class DeskRows {

    private final Set<String> chosen = new LinkedHashSet<>();
    private Board board = new Board(List.of());
    private DeskShow show = DeskShow.ALL;
    private Optional<String> atHand = Optional.empty();

    /** Takes the desk as it stands now; a tick stays only on what can still be sent. */
    void read(Board now) {
        board = now;
        chosen.removeIf(id -> row(id).filter(Row::isSendable).isEmpty());
    }

    /** Shows what an address asks for; a row that its list does not hold is shown among all. */
    void show(DeskShow asked, Optional<Row> row) {
        show = row.filter(found -> !asked.shows(found.group())).isPresent() ? DeskShow.ALL : asked;
        atHand = row.map(Row::id);
    }

    Board board() {
        return board;
    }

    DeskShow show() {
        return show;
    }

    Optional<Row> row(String id) {
        return board.row(id);
    }

    List<Row> shown() {
        return board.rows().stream().filter(row -> show.shows(row.group())).toList();
    }

    long count(DeskShow list) {
        return board.rows().stream().filter(row -> list.shows(row.group())).count();
    }

    Optional<Row> atHand() {
        return atHand.flatMap(board::row);
    }

    boolean isAtHand(Row row) {
        return atHand.filter(row.id()::equals).isPresent();
    }

    void takeInHand(Row row) {
        atHand = Optional.of(row.id());
    }

    /** The row at hand; the next one when it is gone, or else the first. Empty when nothing is shown. */
    Optional<Row> settle(Optional<Row> next) {
        var shown = shown();
        var here = shown.stream()
                .filter(this::isAtHand)
                .findFirst()
                .or(() -> next.flatMap(row -> row(row.id())).filter(shown::contains))
                .or(() -> shown.stream().findFirst());
        here.ifPresent(this::takeInHand);
        return here;
    }

    /** The row below, or the last one itself. */
    Row after(Row row) {
        var shown = shown();
        var at = shown.indexOf(row);
        return at + 1 < shown.size() ? shown.get(at + 1) : row;
    }

    Set<String> chosenIds() {
        return Set.copyOf(chosen);
    }

    List<Row> chosen() {
        return board.rows().stream().filter(row -> chosen.contains(row.id())).toList();
    }

    void choose(Row row, boolean ticked) {
        if (ticked) {
            chosen.add(row.id());
        } else {
            chosen.remove(row.id());
        }
        takeInHand(row);
    }

    /** Ticks everything between the first ticked row and this one. */
    void chooseUpTo(Row row) {
        var sendable = sendable();
        var to = sendable.indexOf(row.id());
        var from = chosen.stream()
                .mapToInt(sendable::indexOf)
                .filter(at -> at >= 0)
                .min()
                .orElse(to);
        chosen.addAll(sendable.subList(Math.min(from, to), Math.max(from, to) + 1));
        takeInHand(row);
    }

    void chooseAll(boolean ticked) {
        chosen.clear();
        if (ticked) {
            chosen.addAll(sendable());
        }
    }

    private List<String> sendable() {
        return shown().stream().filter(Row::isSendable).map(Row::id).toList();
    }
}
