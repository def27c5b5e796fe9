package org.hearthway.reminder.internal;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.net.ConnectException;
import java.net.NoRouteToHostException;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.angus.mail.smtp.SMTPAddressFailedException;
import org.eclipse.angus.mail.smtp.SMTPSendFailedException;
import org.eclipse.angus.mail.smtp.SMTPSenderFailedException;
import org.eclipse.angus.mail.util.MailConnectException;
import org.springframework.mail.MailAuthenticationException;
import org.springframework.mail.MailException;
import org.springframework.mail.MailSendException;
import org.springframework.mail.javamail.JavaMailSender;

/** Hands messages to a mail server, and tells a plain no from a line that broke when nobody can say. */
class SmtpPostman implements Postman {

    private static final int NOT_NOW = 400;
    private static final int PERMANENT = 500;

    private final JavaMailSender sender;

    SmtpPostman(JavaMailSender sender) {
        this.sender = sender;
    }

    @Override
    public void deliver(MimeMessage message) throws NotTaken {
        try {
            sender.send(message);
        } catch (MailAuthenticationException e) {
            throw new NotTaken("sign-in", false, false);
        } catch (MailException e) {
            throw read(chain(e));
        }
    }

    @Override
    public boolean sends() {
        return true;
    }

    private static NotTaken read(List<Throwable> chain) {
        for (var cause : chain) {
            if (cause instanceof SMTPAddressFailedException address) {
                return answer("address-refused", address.getReturnCode());
            }
            if (cause instanceof SMTPSendFailedException refused) {
                return answer("refused", refused.getReturnCode());
            }
            if (cause instanceof SMTPSenderFailedException refused) {
                return answer("refused", refused.getReturnCode());
            }
            if (cause instanceof MailConnectException
                    || cause instanceof ConnectException
                    || cause instanceof UnknownHostException
                    || cause instanceof NoRouteToHostException) {
                return new NotTaken("no-connection", false, false);
            }
        }
        return unknown();
    }

    private static NotTaken answer(String reason, int code) {
        if (code < NOT_NOW) {
            return unknown();
        }
        return code >= PERMANENT ? new NotTaken(reason, true, false) : new NotTaken("busy", false, false);
    }

    /** A lost reply looks like a lost message (RFC 5321 section 4.5.3.2): it goes again under the same Message-ID. */
    private static NotTaken unknown() {
        return new NotTaken("broken-off", false, true);
    }

    /** Everything that lies behind an exception, the most telling last-linked ones included. */
    private static List<Throwable> chain(MailException e) {
        var all = new ArrayList<Throwable>();
        collect(e, all);
        if (e instanceof MailSendException sending) {
            for (var failed : sending.getMessageExceptions()) {
                collect(failed, all);
            }
        }
        return all;
    }

    private static void collect(Throwable thrown, List<Throwable> into) {
        if (into.contains(thrown)) {
            return;
        }
        into.add(thrown);
        if (thrown instanceof MessagingException mail && mail.getNextException() != null) {
            collect(mail.getNextException(), into);
        }
        if (thrown.getCause() != null) {
            collect(thrown.getCause(), into);
        }
    }
}
