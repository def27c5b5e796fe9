package org.hearthway.laws;

import static org.hearthway.testing.SignInRequests.PASSWORD;
import static org.hearthway.testing.SignInRequests.signIn;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Location;
import com.vaadin.flow.router.RouteParameters;
import java.util.Map;
import java.util.Objects;
import org.hearthway.testing.SignInRequests;
import org.springframework.context.ApplicationContext;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.web.servlet.MockMvc;

/** Pages about a child, opened without a browser by somebody who signed in through the form. */
final class Pages {

    private final ApplicationContext program;
    private final MockMvc web;

    Pages(ApplicationContext program, MockMvc web) {
        this.program = program;
        this.web = web;
    }

    /** Signs in on this thread; who that is can be used again, as another page of the same session does. */
    SecurityContext signedIn(SignInRequests.Somebody somebody) throws Exception {
        var session = web.perform(signIn(somebody.email(), PASSWORD))
                .andReturn()
                .getRequest()
                .getSession(false);
        var context = (SecurityContext) Objects.requireNonNull(session).getAttribute("SPRING_SECURITY_CONTEXT");
        SecurityContextHolder.setContext(context);
        return Objects.requireNonNull(context);
    }

    /** Makes the page anew. */
    BeforeEnterObserver made(Class<?> page) {
        UI.setCurrent(new UI());
        return (BeforeEnterObserver) program.getAutowireCapableBeanFactory().createBean(page);
    }

    /** Enters the page for this child, named as an address names one. */
    static void enter(BeforeEnterObserver page, String child) {
        var event = mock(BeforeEnterEvent.class);
        when(event.getRouteParameters()).thenReturn(new RouteParameters(Map.of("child", child, "exercise", "bridge")));
        when(event.getLocation()).thenReturn(new Location("my/" + child));
        page.beforeEnter(event);
    }

    /** What a test leaves behind on its thread. */
    static void leave() {
        SecurityContextHolder.clearContext();
        UI.setCurrent(null);
    }
}
