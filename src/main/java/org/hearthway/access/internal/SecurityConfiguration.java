package org.hearthway.access.internal;

import static org.springframework.security.config.Customizer.withDefaults;

import com.vaadin.flow.spring.security.VaadinSavedRequestAwareAuthenticationSuccessHandler;
import com.vaadin.flow.spring.security.VaadinSecurityConfigurer;
import java.util.Map;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.session.SessionRegistry;
import org.springframework.security.core.session.SessionRegistryImpl;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.AuthenticationSuccessHandler;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.session.HttpSessionEventPublisher;

/** Sign-in, what stands open without it, and the headers of every answer. */
@Configuration(proxyBeanMethods = false)
class SecurityConfiguration {

    /** Pages and files that need no sign-in; everything else does. */
    private static final String[] OPEN = {
        "/", "/sign-in", "/call/**", "/v/**", "/welcome/**", "/look/**", "/figure/**", "/offline/**", "/error"
    };

    /**
     * The pages are drawn by a client engine that compiles small functions and sets styles in place, hence
     * {@code unsafe-inline} and {@code unsafe-eval}; nothing may come from elsewhere.
     */
    private static final String CONTENT_POLICY = "default-src 'self'; script-src 'self' 'unsafe-inline' 'unsafe-eval';"
            + " style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self' data:; connect-src 'self';"
            + " object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    @Bean
    SecurityFilterChain pages(HttpSecurity http, SessionRegistry sessions) throws Exception {
        http.authorizeHttpRequests(requests -> requests.requestMatchers(OPEN).permitAll());
        http.with(VaadinSecurityConfigurer.vaadin(), vaadin -> vaadin.loginView("/sign-in", "/sign-in"));
        http.formLogin(form -> form.loginPage("/sign-in")
                .loginProcessingUrl("/sign-in")
                .usernameParameter("email")
                .successHandler(afterSignIn())
                .failureUrl("/sign-in?wrong"));
        http.sessionManagement(session -> session.sessionFixation(fixation -> fixation.changeSessionId())
                .maximumSessions(-1)
                .sessionRegistry(sessions)
                .expiredUrl("/sign-in"));
        http.headers(headers -> headers.contentSecurityPolicy(csp -> csp.policyDirectives(CONTENT_POLICY))
                .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.NO_REFERRER))
                .crossOriginOpenerPolicy(opener -> opener.policy(CrossOriginOpenerPolicy.SAME_ORIGIN))
                .frameOptions(frame -> frame.deny())
                .contentTypeOptions(withDefaults()));
        return http.build();
    }

    /** Leads to the page that was asked for before signing in, else through the front door to where one begins. */
    private static AuthenticationSuccessHandler afterSignIn() {
        var handler = new VaadinSavedRequestAwareAuthenticationSuccessHandler();
        handler.setDefaultTargetUrl("/");
        return handler;
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
