package org.hearthway.access.internal;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.stereotype.Component;

/** Back to the sign-in page, with the address that was typed still there. */
@Component
class FailedSignIn implements AuthenticationFailureHandler {

    private static final String TYPED = FailedSignIn.class.getName();
    private static final int LONGEST = 254;

    @Override
    public void onAuthenticationFailure(
            HttpServletRequest request, HttpServletResponse response, AuthenticationException failure)
            throws IOException {
        var email = Optional.ofNullable(request.getParameter("email")).orElse("");
        request.getSession().setAttribute(TYPED, email.substring(0, Math.min(LONGEST, email.length())));
        response.sendRedirect("/sign-in?" + (failure instanceof LockedException ? "wait" : "wrong"));
    }

    /** What was typed at the last failed try; shown once. */
    static String typed(@Nullable HttpSession session) {
        if (session == null || !(session.getAttribute(TYPED) instanceof String email)) {
            return "";
        }
        session.removeAttribute(TYPED);
        return email;
    }
}
