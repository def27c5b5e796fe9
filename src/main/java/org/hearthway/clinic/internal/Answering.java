package org.hearthway.clinic.internal;

import org.hearthway.clinic.ClinicSettings;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.web.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Says, once the first request can be taken, under which address this machine answers. */
@Component
class Answering {

    private static final Logger LOG = LoggerFactory.getLogger(Answering.class);

    private final ClinicSettings clinic;
    private final String host;

    Answering(ClinicSettings clinic, @Value("${server.address:localhost}") String host) {
        this.clinic = clinic;
        this.host = host.equals("127.0.0.1") ? "localhost" : host;
    }

    @EventListener
    void on(ApplicationReadyEvent ready) {
        if (ready.getApplicationContext() instanceof ServletWebServerApplicationContext server) {
            var place = "http://" + host + ":" + server.getWebServer().getPort();
            if (clinic.demo()) {
                LOG.info("The demo clinic answers at {}", place);
            } else {
                LOG.info("Hearthway answers at {}", place);
            }
        }
    }
}
