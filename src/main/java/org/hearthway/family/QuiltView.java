package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.Exercise.Kind;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.program.Progress;
import org.hearthway.program.engine.trend.Quilt.Patch;

/**
 * The child's own page: today's exercises as pictures, and the quilt that grows by a patch each week. Few words, no
 * numbers of the clinic, nothing that can be lost.
 */
@Route("my/:child/quilt")
@PermitAll
class QuiltView extends FamilyPage {

    private final transient HomeWeek week;
    private final transient Progress progress;
    private final transient Pause pauses;

    QuiltView(Readers readers, HomeWeek week, Progress progress, Pause pauses) {
        super(readers);
        this.week = week;
        this.progress = progress;
        this.pauses = pauses;
    }

    @Override
    Place place() {
        return Place.TODAY;
    }

    @Override
    String title(Reader reader) {
        return reader.say("family.quilt.title", reader.name());
    }

    @Override
    Optional<String> below() {
        return Optional.of(title(reader()));
    }

    @Override
    void draw(Reader reader) {
        var patches = progress.quilt(reader.viewer(), reader.id());
        add(Bits.hero(reader.say("family.quilt.over"), title(reader)));
        if (!pauses.asksNothing(reader)) {
            today(reader);
        }
        if (patches.isEmpty()) {
            add(Bits.strip("quiet u-mt5", Icon.INFO, reader.say("family.quilt.none")));
            return;
        }
        add(Tags.h2("hw-h2 u-mt5", reader.sentence("family.quilt.weeks", patches.size())));
        add(Tags.div("hw-quilted", QuiltPicture.of(patches, reader.say("family.quilt.picture", patches.size()))));
        add(Tags.p("u-lead", reader.say("family.quilt.grows")));
        add(sewn(reader, patches));
    }

    private void today(Reader reader) {
        var planned = week.days(reader.viewer(), reader.id(), reader.today(), 1)
                .get(0)
                .planned();
        if (planned.isEmpty()) {
            return;
        }
        add(Tags.h2("hw-h2", reader.say("family.place.today")));
        var tiles = Bits.el("ul", "hw-tiles");
        for (int i = 0; i < planned.size(); i++) {
            tiles.add(tile(reader, planned.get(i), i + 1));
        }
        add(tiles);
    }

    /** A picture that leads to its page in pictures; a check once it is done, and what is not done has no mark. */
    private static Component tile(Reader reader, Planned planned, int number) {
        var name = reader.text(planned.exercise().name());
        var well = Tags.div("hw-well", Pictures.end(reader, planned.exercise(), Side.isLeft(planned.line())));
        var tile = Tags.link("hw-tile", reader.address("pictures?n=" + number), well, Tags.span("", name));
        if (DayStory.outcome(planned)
                .filter(outcome -> outcome != Outcome.COULD_NOT)
                .isPresent()) {
            well.add(Tags.span("hw-tile-done", Icon.CHECK.draw()));
            tile.getElement().setAttribute("aria-label", reader.say("family.quilt.done", name));
        }
        return Bits.el("li", "", tile);
    }

    private static Component sewn(Reader reader, List<Patch> patches) {
        var list = Bits.el("ul", "hw-sewn-list");
        list.getElement().setAttribute("aria-label", reader.say("family.quilt.sewn"));
        Arrays.stream(Kind.values())
                .filter(kind -> patches.stream().anyMatch(patch -> patch.kinds().contains(kind.name())))
                .forEach(kind -> list.add(Bits.el(
                        "li", "", QuiltPicture.sample(kind), Tags.span("", reader.say("family.quilt.kind." + kind)))));
        return list;
    }
}
