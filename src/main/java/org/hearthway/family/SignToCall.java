package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.parts.Tags;
import org.hearthway.sign.CallLines;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.sign.Signs;

/** One sign of the content beside what it belongs to, with the row that calls. */
@org.springframework.stereotype.Component
class SignToCall {

    private final Signs signs;
    private final CallLines lines;

    SignToCall(Signs signs, CallLines lines) {
        this.signs = signs;
        this.lines = lines;
    }

    /**
     * The sign and whom to call.
     *
     * @param id of the sign; whoever the clinic hides it from still gets the number
     * @param usual how soon to call when the sign is not shown
     */
    List<Component> draw(Reader reader, String id, Urgency usual) {
        var sign = signs.all().stream().filter(one -> one.id().equals(id)).findFirst();
        var rows = new CallRows(
                reader, CallRows.only(lines.lines(), sign.map(Sign::urgency).orElse(usual)));
        return Stream.concat(words(reader, sign).stream(), Stream.of(rows)).toList();
    }

    private static Optional<Component> words(Reader reader, Optional<Sign> sign) {
        return sign.map(one -> Tags.p("", reader.text(one.says())));
    }
}
