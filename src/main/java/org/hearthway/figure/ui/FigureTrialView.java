package org.hearthway.figure.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.Optional;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.figure.FigureTrials;
import org.hearthway.figure.FigureTrials.Trial;
import org.hearthway.parts.ClinicTabs;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/**
 * For authors of pictures: the file on one side, what it draws on the other, what is wrong with it under the text.
 * Nothing is kept; a file that is good is copied into the content.
 */
@Route("staff/clinic/figures")
@RolesAllowed({"ADMINISTRATOR", "THERAPIST"})
class FigureTrialView extends Div implements BeforeEnterObserver, HasDynamicTitle {

    private static final String FIGURE = "figure";

    /** Long enough for a word to be typed to its end. */
    private static final int PAUSE = 700;

    private static final String FRESH = """
            id: new-picture
            title: {en: New picture, es: Imagen nueva}
            kind: strength
            view: side
            side: R
            supports: [mat]
            start:
              posture: standing
              contact: [feet on floor]
            end:
              R: {shoulder: 90}
            arrow: {of: Rwrist, pivot: hip}
            """;

    private final transient FigureTrials trials;
    private final transient SignedIn signedIn;
    private final transient Words words;
    private final Language language;
    private final ComboBox<String> pick = new ComboBox<>();
    private final TextArea text = new TextArea();
    private final Div says = Tags.div("hw-try-says");
    private final Div pictures = Tags.div("hw-try-pictures");

    FigureTrialView(FigureTrials trials, SignedIn signedIn, Words words) {
        this.trials = trials;
        this.signedIn = signedIn;
        this.words = words;
        var viewer = signedIn.require();
        this.language = viewer.language();
        addClassName("hw-worksheet");
        var content = Tags.div("hw-main hw-clinic hw-try");
        if (viewer.roles().contains(Role.ADMINISTRATOR)) {
            content.add(new ClinicTabs(words, language, "figures"));
        }
        content.add(
                Tags.div("hw-title", Tags.h1(getPageTitle()), Tags.span("hw-quiet", say("says"))),
                Tags.div("hw-try-columns", file(), pictures));
        add(content, new KeyBar().remark(say("kept")));
    }

    private String say(String key, Object... args) {
        return words.say(language, "figure.try." + key, args);
    }

    @Override
    public String getPageTitle() {
        return say("title");
    }

    private Component file() {
        pick.setLabel(say("pick"));
        pick.setItems(trials.names(signedIn.require()));
        pick.addValueChangeListener(chosen -> {
            if (chosen.isFromClient() && chosen.getValue() != null) {
                getUI().ifPresent(ui -> ui.navigate(
                        FigureTrialView.class, com.vaadin.flow.router.QueryParameters.of(FIGURE, chosen.getValue())));
            }
        });
        text.setLabel(say("text"));
        text.setHelperText(say("text.hint"));
        text.addClassName("hw-try-text");
        text.setMaxLength(FigureTrials.LONGEST);
        text.setValueChangeMode(ValueChangeMode.LAZY);
        text.setValueChangeTimeout(PAUSE);
        text.getElement().setAttribute("spellcheck", "false").setAttribute("autocapitalize", "off");
        text.addValueChangeListener(typed -> draw(typed.getValue()));
        says.getElement().setAttribute("aria-live", "polite");
        return Tags.div(
                "hw-try-file",
                Tags.div("hw-try-pick", pick, Tags.button("plain", say("fresh"), pressed -> {
                    pick.clear();
                    text.setValue(FRESH);
                    text.focus();
                })),
                text,
                says);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var viewer = signedIn.require();
        var names = trials.names(viewer);
        var asked = event.getLocation()
                .getQueryParameters()
                .getSingleParameter(FIGURE)
                .filter(names::contains)
                .or(() -> names.stream().findFirst());
        pick.setValue(asked.orElse(null));
        var file = asked.flatMap(name -> trials.text(viewer, name)).orElse(FRESH);
        if (file.equals(text.getValue())) {
            draw(file);
        } else {
            text.setValue(file);
        }
    }

    private void draw(String typed) {
        says.removeAll();
        text.setInvalid(false);
        Optional<Trial> trial = Optional.empty();
        try {
            trial = Optional.of(trials.of(signedIn.require(), typed));
        } catch (Invalid tooLong) {
            text.setErrorMessage(words.say(language, tooLong.problems().get(0)));
            text.setInvalid(true);
        }
        trial.ifPresent(drawn -> {
            says.add(new TrialFindings(words, language, typed, drawn));
            if (!drawn.sides().isEmpty()) {
                pictures.removeAll();
                drawn.sides().forEach(side -> pictures.add(new TrialPictures(words, language, side)));
            }
        });
        var old = trial.filter(drawn -> !drawn.sides().isEmpty()).isEmpty();
        pictures.setClassName("old", old);
        if (old) {
            says.add(Tags.p("hw-quiet", say("old")));
        }
    }
}
