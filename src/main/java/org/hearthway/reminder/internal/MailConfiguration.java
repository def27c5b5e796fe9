package org.hearthway.reminder.internal;

import java.nio.file.Path;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.mail.javamail.JavaMailSender;

/** Chooses how messages leave: by the mail server of {@code spring.mail.host}, or into a folder when none is set. */
@Configuration(proxyBeanMethods = false)
class MailConfiguration {

    @Bean
    Postman postman(ObjectProvider<JavaMailSender> server, @Value("${hearthway.data}") String data) {
        var sender = server.getIfAvailable();
        return sender == null ? new FolderPostman(Path.of(data, "outgoing")) : new SmtpPostman(sender);
    }
}
