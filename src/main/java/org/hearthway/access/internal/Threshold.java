package org.hearthway.access.internal;

import java.net.URI;
import org.hearthway.access.SignedIn;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpStatus;
import org.springframework.web.servlet.function.RouterFunction;
import org.springframework.web.servlet.function.RouterFunctions;
import org.springframework.web.servlet.function.ServerResponse;

/** The address without a page: leads to where one begins. */
@Configuration(proxyBeanMethods = false)
class Threshold {

    /** A page in the browser talks to its server under the same address; it says so with this parameter. */
    private static final String FROM_A_PAGE = "v-r";

    @Bean
    RouterFunction<ServerResponse> wayIn(SignedIn signedIn, Landing landing) {
        return RouterFunctions.route()
                .GET(
                        "/",
                        request -> request.param(FROM_A_PAGE).isEmpty(),
                        request -> ServerResponse.status(HttpStatus.FOUND)
                                .location(URI.create(
                                        signedIn.person().map(landing::of).orElse("/sign-in")))
                                .build())
                .build();
    }
}
