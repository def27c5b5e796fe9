package org.hearthway.figure.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.hearthway.base.Language;
import org.hearthway.figure.FigureTrials.Drawn;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Still;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** The pictures of one side as families see them: large, moving, small, and in words. */
@JsModule("context://figure/moving-figure.js")
final class TrialPictures extends Div {

    private static final String SVG = "image/svg+xml";
    private static final String IN_THE_ADDRESS = "data:image/svg+xml;base64,";

    private final transient Words words;
    private final Language language;

    TrialPictures(Words words, Language language, Drawn drawn) {
        this.words = words;
        this.language = language;
        addClassName("hw-try-side");
        var side = drawn.side()
                .map(which -> words.say(language, "figure.try.side." + which))
                .orElseGet(() -> say("side.none"));
        getElement().setAttribute("role", "group").setAttribute("aria-label", side);
        add(
                Tags.h2("", side),
                Tags.div(
                        "hw-try-row",
                        named("start", still(drawn, drawn.start(), Still.Pose.START)),
                        named("end", still(drawn, drawn.end(), Still.Pose.END)),
                        named("moving", moving(drawn))),
                Tags.div(
                        "hw-try-row small",
                        still(drawn, drawn.start(), Still.Pose.START),
                        still(drawn, drawn.end(), Still.Pose.END),
                        Tags.span("hw-quiet", say("small"))));
        for (var each : Language.values()) {
            var told = Tags.p("hw-try-words", drawn.words().in(each));
            told.getElement().setAttribute("lang", each.tag());
            add(told);
        }
    }

    private String say(String key) {
        return words.say(language, "figure.try." + key);
    }

    private Component named(String key, Component picture) {
        return Tags.div("hw-try-one", picture, Tags.span("hw-sub", say(key)));
    }

    /** The picture in the address itself: it stands nowhere else. */
    private static HtmlContainer still(Drawn drawn, String svg, Still.Pose pose) {
        var address = IN_THE_ADDRESS + Base64.getEncoder().encodeToString(svg.getBytes(StandardCharsets.UTF_8));
        return Still.of(address, drawn.ratio(), pose, "");
    }

    private Component moving(Drawn drawn) {
        var bytes = drawn.moving().getBytes(StandardCharsets.UTF_8);
        var button = new HtmlContainer("button");
        button.addClassNames("hw-button", "plain");
        button.getElement().setAttribute("type", "button");
        button.add(Icon.PLAY.draw("sm", "play"), Icon.PAUSE.draw("sm", "pause"), Tags.span("", say("show")));
        var figure = new HtmlContainer("hw-moving-figure");
        figure.add(
                Tags.div(
                        "hw-poses",
                        still(drawn, drawn.start(), Still.Pose.START),
                        still(drawn, drawn.end(), Still.Pose.END)),
                Tags.div("over", button));
        // its address is that of a page that is open
        figure.addAttachListener(shown -> figure.getElement()
                .setAttribute(
                        "data-src",
                        DownloadHandler.fromInputStream(asked -> new DownloadResponse(
                                new ByteArrayInputStream(bytes), "moving.svg", SVG, bytes.length))));
        figure.getElement()
                .setAttribute("data-show", say("show"))
                .setAttribute("data-stop", say("show.stop"))
                .setAttribute("data-pause", say("show.pause"))
                .setAttribute("data-play", say("show.play"));
        return Tags.div("hw-stage", figure);
    }
}
