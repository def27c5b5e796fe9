package org.hearthway.clinic.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.content.ContentFolder;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Profile;
import org.springframework.core.env.Environment;

/** The clinic's settings: the demo's from its content file, a real clinic's from properties. */
@Configuration(proxyBeanMethods = false)
class ClinicConfiguration {

    private static final String DEMO_FILE = "demo/clinic.yaml";

    @Bean
    @Profile("clinic")
    ClinicSettings clinicSettings(Environment environment) {
        var wrong = new ArrayList<String>();
        var settings = new SettingsReader(new SettingsReader.Source() {
                    @Override
                    public Optional<String> text(String name) {
                        return Optional.ofNullable(environment.getProperty(property(name)));
                    }

                    @Override
                    public void wrong(String name, String what, String expected) {
                        wrong.add(property(name) + ": " + what + ", expected " + expected);
                    }
                })
                .read(false);
        if (!wrong.isEmpty()) {
            throw new SettingsBroken(List.copyOf(wrong));
        }
        return settings;
    }

    private static String property(String name) {
        return "hearthway.clinic." + name;
    }

    @Bean
    @Profile("!clinic")
    ClinicSettings demoSettings(ContentFolder content, Environment environment) {
        return content.readAhead(DEMO_FILE, file -> fromFile(file, environment));
    }

    /** The same file again with all other content, so that it is a known kind and checked in every clinic. */
    @Bean
    ContentKind demoClinicFile(Environment environment) {
        return new ContentKind() {
            @Override
            public String place() {
                return DEMO_FILE;
            }

            @Override
            public void read(Entry file) {
                fromFile(file, environment);
            }
        };
    }

    private static ClinicSettings fromFile(Entry file, Environment environment) {
        return new SettingsReader(new SettingsReader.Source() {
                    @Override
                    public Optional<String> text(String name) {
                        return switch (name) {
                            case "office-days" -> Optional.of(String.join(",", file.texts(name)));
                            case "base-url" -> Optional.of(ownAddress(environment));
                            default -> file.maybeText(name);
                        };
                    }

                    @Override
                    public void wrong(String name, String what, String expected) {
                        file.wrong(name, "\"" + name + "\": " + what, expected);
                    }
                })
                .read(true);
    }

    /** The demo runs on this machine, on whatever port it was given. */
    private static String ownAddress(Environment environment) {
        return environment.getProperty(
                property("base-url"), "http://localhost:" + environment.getProperty("server.port", "8080"));
    }
}
