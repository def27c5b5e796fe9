package org.hearthway.program.internal;

import org.springframework.stereotype.Component;

/** The things at home that exercises need. */
@Component
class HomeThings extends NamedThings {

    HomeThings() {
        super("home-things.yaml");
    }
}
