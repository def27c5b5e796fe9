package org.hearthway.family;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import org.hearthway.base.NotAvailable;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Told;
import org.hearthway.program.HomeWeek;
import org.hearthway.sign.CallLines;

/** Today in pictures for a helper: the exercises and their ticks, nothing else. */
@Route("help/:child/pictures")
@RolesAllowed("HELPER")
class HelpPicturesView extends PicturePage {

    HelpPicturesView(Readers readers, HomeWeek week, CallLines lines) {
        super(readers, week, lines);
    }

    @Override
    Reader read(Readers from, String child) {
        return from.helping(child);
    }

    @Override
    boolean mayTick(Reader reader) {
        return true;
    }

    /** While nothing is asked nothing is planned, which is all that a helper is told. */
    @Override
    boolean asksNothing(Reader reader) {
        return false;
    }

    /** Everybody's page of telephone numbers: a helper has no other. */
    @Override
    Anchor call(Reader reader) {
        var call = new Anchor("call");
        call.add(Icon.CALL.draw());
        call.setRouterIgnore(true);
        return call;
    }

    @Override
    void refused(Reader reader, NotAvailable notAvailable) {
        refresh();
        Told.couldNot(reader.say("family.help.not-yours"));
    }
}
