package org.hearthway.family;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.HomeWeek;
import org.hearthway.sign.CallLines;

/** Today in pictures for the family. */
@Route("my/:child/pictures")
@PermitAll
class PicturesView extends PicturePage {

    private final transient Gate gate;
    private final transient Pause pauses;

    PicturesView(Readers readers, HomeWeek week, CallLines lines, Gate gate, Pause pauses) {
        super(readers, week, lines);
        this.gate = gate;
        this.pauses = pauses;
    }

    @Override
    boolean mayTick(Reader reader) {
        return gate.allows(reader.viewer(), Action.LOG_SESSION, reader.id());
    }

    @Override
    boolean asksNothing(Reader reader) {
        return pauses.asksNothing(reader);
    }

    @Override
    Anchor call(Reader reader) {
        return Tags.link("", reader.address("call"), Icon.CALL.draw());
    }
}
