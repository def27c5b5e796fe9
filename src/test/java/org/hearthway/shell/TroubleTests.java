package org.hearthway.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Answers.RETURNS_DEEP_STUBS;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.doAnswer;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.server.ErrorEvent;
import com.vaadin.flow.server.ErrorHandler;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.SessionInitEvent;
import com.vaadin.flow.server.SessionInitListener;
import com.vaadin.flow.server.VaadinService;
import com.vaadin.flow.server.VaadinSession;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.words.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;

/**
 * LG3: whatever fails, in a page or after a press, the person sees a reference number and never a trace; and LG1 for
 * it: the log has the number and where it happened, and nothing of what the failure says.
 */
@HearthwayTest
@ExtendWith(OutputCaptureExtension.class)
class TroubleTests {

    private static final String SECRET = "Wren Halloway, born 2019-05-04";
    private static final Pattern REFERENCE = Pattern.compile("\\b[0-9A-F]{8}\\b");

    @Autowired
    private Words words;

    @Autowired
    private ClinicSettings clinic;

    @Autowired
    private SignedIn signedIn;

    private UI page = new UI();

    @BeforeEach
    void openAPage() {
        page = new UI();
        page.getInternals().setSession(mock(VaadinSession.class, RETURNS_DEEP_STUBS));
        page.setLocale(Language.EN.locale());
        UI.setCurrent(page);
    }

    @AfterEach
    void close() {
        UI.setCurrent(null);
    }

    private static Exception failure() {
        return new IllegalStateException(SECRET, new IllegalArgumentException("caused by " + SECRET));
    }

    private static String reference(String told) {
        var found = REFERENCE.matcher(told);
        assertThat(found.find()).as(told).isTrue();
        return found.group();
    }

    private static void tells(String told, CapturedOutput log) {
        assertThat(told)
                .doesNotContain(SECRET)
                .doesNotContain("Exception")
                .doesNotContain("org.hearthway")
                .doesNotContain("\tat ");
        assertThat(log.getAll())
                .contains("reference " + reference(told), "IllegalStateException", "TroubleTests")
                .doesNotContain("Halloway")
                .doesNotContain("2019-05-04");
    }

    @Test
    void aPageThatFailsShowsANumberAndWhomToCall(CapturedOutput log) {
        var trouble = new TroublePage(words, clinic);

        var status = trouble.setErrorParameter(
                mock(BeforeEnterEvent.class), new ErrorParameter<>(Exception.class, failure()));

        assertThat(status).isEqualTo(500);
        var told = trouble.getElement().getTextRecursively();
        assertThat(told).contains("555-0121", "555-0100");
        tells(told, log);
    }

    @Test
    void aPressThatFailsShowsANumber(CapturedOutput log) {
        tells(afterAPress(failure()), log);
    }

    @Test
    void aPressThatWasRefusedSaysWhyAndIsNoTrouble(CapturedOutput log) {
        assertThat(afterAPress(new NotAvailable())).isEqualTo(words.say(Language.EN, "shell.not-available"));
        assertThat(afterAPress(new Overtaken())).isEqualTo(words.say(Language.EN, "shell.overtaken"));
        var problem = Problem.at("name", "access.problem.name", 120);
        assertThat(afterAPress(new Invalid(problem))).isEqualTo(words.say(Language.EN, problem));
        assertThat(log.getAll()).doesNotContain("reference ");
    }

    @Test
    void aFailureWithoutAPageIsNotedAlike(CapturedOutput log) {
        UI.setCurrent(null);
        handler().error(new ErrorEvent(failure()));

        assertThat(log.getAll()).containsPattern("reference [0-9A-F]{8}").doesNotContain("Halloway");
    }

    /** What the person is told when an act on an open page ends this way. */
    private String afterAPress(Throwable thrown) {
        openAPage();
        handler().error(new ErrorEvent(thrown));
        var told = new StringBuilder();
        page.getInternals().getStateTree().runExecutionsBeforeClientResponse();
        page.getChildren()
                .filter(Notification.class::isInstance)
                .forEach(note ->
                        told.append(note.getElement().getProperty("text", "")).append(texts(note.getElement())));
        return told.toString();
    }

    private static String texts(Element element) {
        return Stream.concat(
                        Stream.of(element.isTextNode() ? element.getText() : ""),
                        element.getChildren().map(TroubleTests::texts))
                .reduce("", String::concat);
    }

    /** The handler that every session gets. */
    private ErrorHandler handler() {
        var service = mock(VaadinService.class);
        var session = mock(VaadinSession.class);
        var set = new AtomicReference<ErrorHandler>();
        doAnswer(call -> {
                    set.set(call.getArgument(0));
                    return null;
                })
                .when(session)
                .setErrorHandler(any());
        doAnswer(call -> {
                    var begun = mock(SessionInitEvent.class);
                    when(begun.getSession()).thenReturn(session);
                    call.<SessionInitListener>getArgument(0).sessionInit(begun);
                    return null;
                })
                .when(service)
                .addSessionInitListener(any());
        var started = mock(ServiceInitEvent.class);
        when(started.getSource()).thenReturn(service);
        new SessionSetup(words, signedIn).serviceInit(started);
        return java.util.Objects.requireNonNull(set.get());
    }
}
