package org.hearthway.access.internal;

import static org.springframework.security.config.Customizer.withDefaults;

import com.vaadin.flow.server.HandlerHelper;
import com.vaadin.flow.spring.security.VaadinSecurityConfigurer;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import java.util.Set;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.authentication.AuthenticationManager;
import org.springframework.security.authentication.ProviderManager;
import org.springframework.security.authentication.RememberMeAuthenticationProvider;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.session.SessionRegistry;
import org.springframework.security.core.session.SessionRegistryImpl;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.header.HeaderWriter;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.DelegatingRequestMatcherHeaderWriter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.header.writers.StaticHeadersWriter;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.session.HttpSessionEventPublisher;
import org.springframework.security.web.session.SessionInformationExpiredEvent;
import org.springframework.security.web.util.matcher.NegatedRequestMatcher;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;

/** Sign-in, what stands open without it, and the headers of every answer. */
@Configuration(proxyBeanMethods = false)
class SecurityConfiguration {

    static final String SIGN_IN = "/sign-in";

    /** Pages outside the component library; some of them also need no sign-in, see {@link #FILES}. */
    private static final String[] PLAIN = {
        SIGN_IN, "/call/**", "/session/**", "/v/**", "/welcome/**", "/emergency/**", Landing.NO_CHILD
    };

    private static final String[] FILES = {"/look/**", "/figure/**", "/offline/**", "/parts/**"};

    /** Plain pages bring no script of their own in the text, so theirs is strict. */
    private static final String PLAIN_POLICY = "default-src 'self'; img-src 'self' data:; object-src 'none';"
            + " base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    /**
     * The other pages are drawn by a client engine that compiles small functions and sets styles in place, hence
     * {@code unsafe-inline} and {@code unsafe-eval}; still nothing may come from elsewhere.
     */
    private static final String DRAWN_POLICY = "default-src 'self'; script-src 'self' 'unsafe-inline' 'unsafe-eval';"
            + " style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self' data:; connect-src 'self';"
            + " object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    @Bean
    SecurityFilterChain pages(
            HttpSecurity http,
            AuthenticationManager signIn,
            StaySignedIn stay,
            KnownDevices devices,
            FailedSignIn failed,
            SessionRegistry sessions)
            throws Exception {
        http.authorizeHttpRequests(requests -> requests.requestMatchers("/", "/error")
                .permitAll()
                .requestMatchers(SIGN_IN, "/call/**", "/v/**", "/welcome/**", "/emergency/**")
                .permitAll()
                .requestMatchers("/session/*/again")
                .authenticated()
                .requestMatchers("/session/**")
                .permitAll()
                .requestMatchers(FILES)
                .permitAll());
        // after signing in: to the page that was asked for before, else through the front door to where one begins
        http.with(VaadinSecurityConfigurer.vaadin(), vaadin -> vaadin.loginView(SIGN_IN, SIGN_IN));
        http.authenticationManager(signIn);
        http.formLogin(form -> form.loginPage(SIGN_IN)
                .loginProcessingUrl(SIGN_IN)
                .usernameParameter("email")
                .authenticationDetailsSource(request -> SignInFrom.of(request, devices))
                .failureHandler(failed));
        http.rememberMe(remember -> remember.rememberMeServices(stay).key(StaySignedIn.MADE_HERE));
        http.logout(logout -> logout.logoutRequestMatcher(SecurityConfiguration::asksOut)
                .logoutSuccessUrl(SIGN_IN)
                .addLogoutHandler(stay));
        http.sessionManagement(session -> session.sessionFixation(fixation -> fixation.changeSessionId())
                .maximumSessions(-1)
                .sessionRegistry(sessions)
                .expiredSessionStrategy(SecurityConfiguration::ended));
        http.headers(headers -> headers.addHeaderWriter(policy(true))
                .addHeaderWriter(policy(false))
                .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.NO_REFERRER))
                .crossOriginOpenerPolicy(opener -> opener.policy(CrossOriginOpenerPolicy.SAME_ORIGIN))
                .frameOptions(frame -> frame.deny())
                .contentTypeOptions(withDefaults()));
        return http.build();
    }

    /** The only two ways in. Not beans of their own: each found by the framework would be asked a second time. */
    @Bean
    AuthenticationManager signIn(
            AccountRows accounts, PasswordEncoder encoder, SignInDelays delays, KnownDevices devices) {
        return new ProviderManager(
                new GuardedSignIn(new PasswordSignIn(accounts), encoder, accounts, delays, devices),
                new RememberMeAuthenticationProvider(StaySignedIn.MADE_HERE));
    }

    private static HeaderWriter policy(boolean plain) {
        var paths = PathPatternRequestMatcher.withDefaults();
        RequestMatcher isPlain = new OrRequestMatcher(java.util.Arrays.stream(PLAIN)
                .<RequestMatcher>map(paths::matcher)
                .toList());
        return new DelegatingRequestMatcherHeaderWriter(
                plain ? isPlain : new NegatedRequestMatcher(isPlain),
                new StaticHeadersWriter("Content-Security-Policy", plain ? PLAIN_POLICY : DRAWN_POLICY));
    }

    /** A form's POST, which carries a token against forgery, or a link of ours: no other site can sign a person out. */
    private static boolean asksOut(HttpServletRequest request) {
        var form = request.getMethod().equals("POST") && request.getRequestURI().equals("/logout");
        var link = request.getMethod().equals("GET") && request.getRequestURI().equals("/sign-out");
        var from = request.getHeader("Sec-Fetch-Site");
        return form || (link && (from == null || Set.of("same-origin", "none").contains(from)));
    }

    /** A session that was ended from elsewhere: a page goes to sign in; scripts are told in their own ways. */
    private static void ended(SessionInformationExpiredEvent event) throws IOException, ServletException {
        if (event.getRequest().getRequestURI().startsWith("/session/")) {
            // a phone asks by script: it keeps what waits and says itself that a sign-in is due
            event.getResponse().setStatus(HttpServletResponse.SC_UNAUTHORIZED);
        } else if (HandlerHelper.isFrameworkInternalRequest("/*", event.getRequest())) {
            event.getFilterChain().doFilter(event.getRequest(), event.getResponse());
        } else {
            event.getResponse().sendRedirect(SIGN_IN);
        }
    }

    @Bean
    SessionRegistry sessionRegistry() {
        return new SessionRegistryImpl();
    }

    @Bean
    HttpSessionEventPublisher sessionEvents() {
        return new HttpSessionEventPublisher();
    }

    /**
     * Argon2id with 19 MiB, two rounds, one lane (OWASP Password Storage Cheat Sheet); the name of the setting stands
     * before each hash, so that a stronger one can follow and old hashes rise at the next sign-in.
     */
    @Bean
    PasswordEncoder passwordEncoder() {
        var argon2 = new Argon2PasswordEncoder(16, 32, 1, 19 * 1024, 2);
        return new DelegatingPasswordEncoder("argon2id", Map.of("argon2id", argon2));
    }
}
