package org.hearthway.demo;

import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Primary;
import org.springframework.security.crypto.password.PasswordEncoder;

/**
 * The demo's people share one published pass phrase, so it is hashed once and not for each of them, which would take
 * a quarter of the first start. Everything else is left to the encoder of the program.
 */
@Configuration(proxyBeanMethods = false)
@DemoProfile
class OnePassPhrase {

    @Bean
    @Primary
    PasswordEncoder demoPasswordEncoder(@Qualifier("passwordEncoder") PasswordEncoder encoder, People people) {
        return new PasswordEncoder() {
            private String hashed = "";

            @Override
            public synchronized String encode(CharSequence password) {
                if (!password.toString().equals(people.passPhrase())) {
                    return encoder.encode(password);
                }
                if (hashed.isEmpty()) {
                    hashed = encoder.encode(password);
                }
                return hashed;
            }

            @Override
            public boolean matches(CharSequence password, String encoded) {
                return encoder.matches(password, encoded);
            }

            @Override
            public boolean upgradeEncoding(String encoded) {
                return encoder.upgradeEncoding(encoded);
            }
        };
    }
}
