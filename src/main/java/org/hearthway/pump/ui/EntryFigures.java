package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.Div;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Change;
import org.hearthway.pump.PumpEntry.Implant;
import org.hearthway.pump.PumpEntry.Refill;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.RefillDetails;
import org.hearthway.pump.engine.Shown;

/** What an entry says, figure by figure; of what matters it says when nobody wrote it down. */
final class EntryFigures extends Div {

    private final transient PumpFigures figures;
    private final transient PumpWords say;
    private final DerivationList list;

    EntryFigures(PumpFigures figures, PumpEntry entry) {
        this.figures = figures;
        this.say = figures.words();
        this.list = new DerivationList(figures);
        entry.corrects()
                .ifPresent(correction ->
                        words("corrects", say.say("pump.book.corrects", correction.entry(), correction.reason())));
        if (entry.what() instanceof Refill refill) {
            refill(refill);
        } else if (entry.what() instanceof Change change) {
            setting(Optional.of(change.set()));
            words("reason", change.reason());
            day("printed", change.printedAlarm(), true);
        } else if (entry.what() instanceof Implant implant) {
            implant(implant);
        }
        add(list);
    }

    private void refill(Refill refill) {
        var details = refill.details();
        words("drug", details.drug());
        words("lot", details.lot());
        day("expires", details.expires(), false);
        day("beyond-use", refill.beyondUse(), false);
        words("look", details.look());
        if (details.attempts() > 0) {
            words("attempts", Integer.toString(details.attempts()));
        }
        amount("withdrawn", refill.withdrawn(), true);
        amount("left", refill.left(), false);
        amount("injected", refill.injected(), true);
        amount("measured", refill.measured(), false);
        setting(refill.setting());
        words("margin", figures.days(refill.marginDays()));
        day("printed", refill.printedAlarm(), true);
        details.watched().ifPresent(this::watched);
        words("read-again", say.say(details.readAgain() ? "pump.book.yes" : "pump.book.no"));
        words("done-by", details.doneBy());
        words("note", details.note());
    }

    private void watched(RefillDetails.Watch watch) {
        words("watched", say.say("pump.book.from-until", moment(watch.from()), moment(watch.until())));
    }

    private String moment(LocalDateTime local) {
        return figures.moment(local.atZone(figures.zone()).toInstant());
    }

    private void setting(Optional<Setting> set) {
        amount("strength", set.map(Setting::strength), true);
        var words = new DosingWords(figures);
        set.ifPresent(how -> list.line(
                say.say("pump.book.figure.dosing"),
                words.line(how),
                words.parts(how).toArray(String[]::new)));
    }

    private void implant(Implant implant) {
        var model = implant.model();
        amount("reservoir", Optional.of(model.reservoir()), true);
        amount("alarm", Optional.of(model.alarm()), true);
        amount("tubing", Optional.of(model.tubing()), true);
        model.fixedFlow()
                .ifPresentOrElse(
                        flow -> amount("fixed-flow", Optional.of(flow.perDay()), true),
                        () -> words(
                                "deliverable",
                                say.say(
                                        "pump.book.from-until",
                                        figures.result(
                                                model.deliverable().least().perDay()),
                                        figures.result(
                                                model.deliverable().most().perDay()))));
        words("life", say.say("pump.book.months", model.life().toTotalMonths()));
        amount("catheter", implant.catheter().implanted(), true);
        amount("per-length", implant.catheter().bore(), true);
    }

    private void words(String key, String words) {
        if (!words.isBlank()) {
            list.line(say.say("pump.book.figure." + key), words);
        }
    }

    private void amount(String key, Optional<? extends Shown> amount, boolean matters) {
        amount.map(figures::figure)
                .or(() -> matters ? Optional.of(say.say("pump.state.unknown")) : Optional.empty())
                .ifPresent(told -> words(key, told));
    }

    private void day(String key, Optional<LocalDate> day, boolean matters) {
        amount(key, day.map(Shown.Day::new), matters);
    }
}
