package org.hearthway.access.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.router.HasDynamicTitle;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Language;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.parts.ClinicTabs;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** One of the administrator's places: the tabs between them, the title, then two columns. */
abstract class ClinicPage extends Div implements HasDynamicTitle {

    final transient Words words;
    final Language language;
    final Div main = Tags.div("hw-clinic-list");
    final Div side = Tags.div("hw-clinic-side");
    private final transient SignedIn signedIn;
    private final String place;

    ClinicPage(String place, Words words, SignedIn signedIn) {
        this.place = place;
        this.words = words;
        this.signedIn = signedIn;
        this.language = signedIn.require().language();
        addClassName("hw-worksheet");
        var content = Tags.div(
                "hw-main hw-clinic",
                new ClinicTabs(words, language, place),
                title(),
                Tags.div("hw-clinic-columns", main, side));
        add(content, keys().remark(say("access.keys.remark")));
    }

    /** The keys of the page: those of a list, unless the page has none. */
    KeyBar keys() {
        return new KeyBar()
                .tell(say("access.keys.move"), "J", "K")
                .tell(say("access.keys.open"), say("parts.key.enter"));
    }

    private Component title() {
        return Tags.div(
                "hw-title", Tags.h1(say("access.clinic." + place)), Tags.span("hw-quiet", say("access.says." + place)));
    }

    @Override
    public String getPageTitle() {
        return say("access.clinic." + place);
    }

    /** Asked anew for each act, so that a lost role counts at once. */
    Viewer.Person viewer() {
        return signedIn.require();
    }

    String say(String key, Object... args) {
        return words.say(language, key, args);
    }

    NativeTable table(String label, String keys, String... columns) {
        var table = new NativeTable();
        table.addClassName("hw-table");
        table.getElement().setAttribute("aria-label", label);
        var head = new NativeTableRow();
        for (var column : columns) {
            var cell = new NativeTableHeaderCell(say(keys + column));
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        }
        table.getHead().add(head);
        return table;
    }

    static NativeTableCell cell(Component... parts) {
        return new NativeTableCell(parts);
    }

    static NativeTableCell cell(String text) {
        return new NativeTableCell(Tags.span("", text));
    }

    /** Does it, or says that somebody else was first. */
    void attempt(Runnable work) {
        try {
            work.run();
        } catch (Overtaken overtaken) {
            Told.couldNot(say("access.overtaken"));
        }
    }
}
