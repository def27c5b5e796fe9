package org.hearthway;

import com.vaadin.flow.component.page.AppShellConfigurator;
import com.vaadin.flow.component.page.Viewport;
import com.vaadin.flow.server.AppShellSettings;
import com.vaadin.flow.theme.Theme;
import java.time.Clock;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Bean;
import org.springframework.scheduling.annotation.EnableScheduling;

/** Starts Hearthway: the demo clinic by default, a real clinic with the profile {@code clinic}. */
@SpringBootApplication
@EnableScheduling
@Theme("hearthway")
@Viewport("width=device-width, initial-scale=1, viewport-fit=cover")
public class HearthwayApplication implements AppShellConfigurator {

    @Override
    public void configurePage(AppShellSettings settings) {
        settings.addFavIcon("icon", "look/mark.svg", "any");
    }

    /** Starts the program with the arguments of the command line. */
    public static void main(String[] args) {
        SpringApplication.run(HearthwayApplication.class, args);
    }

    /** The one clock of the program; everything that needs "now" or "today" is handed it. */
    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }
}
