package org.hearthway.reminder.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import java.util.concurrent.CompletableFuture;
import org.hearthway.reminder.internal.Postman.NotTaken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mail.javamail.JavaMailSenderImpl;

/** A server that answers as it is told, or hangs up. Codes: RFC 5321 section 4.2. */
class SmtpPostmanTests {

    private static final String HANG_UP = "hang up";

    private static NotTaken deliver(int port) throws Exception {
        var sender = new JavaMailSenderImpl();
        sender.setHost("127.0.0.1");
        sender.setPort(port);
        var message = new MimeMessage(Session.getInstance(new Properties()));
        message.setFrom("office@clinic.example");
        message.setRecipients(MimeMessage.RecipientType.TO, "pat@family.example");
        message.setText("Hello");
        return catchThrowableOfType(NotTaken.class, () -> new SmtpPostman(sender).deliver(message));
    }

    /** Serves one connection; the reply to one command is the test's, all others are a yes. */
    private static NotTaken deliverTo(String command, String reply) throws Exception {
        try (var server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            var served = CompletableFuture.runAsync(() -> serve(server, command, reply));
            var result = deliver(server.getLocalPort());
            served.join();
            return result;
        }
    }

    private static void serve(ServerSocket server, String command, String reply) {
        try (var socket = server.accept();
                var in =
                        new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII))) {
            var out = socket.getOutputStream();
            out.write("220 ready\r\n".getBytes(StandardCharsets.US_ASCII));
            for (var line = in.readLine(); line != null; line = in.readLine()) {
                var answer = line.startsWith(command) ? reply : line.equals("DATA") ? "354 go on" : "250 ok";
                if (answer.equals(HANG_UP)) {
                    return;
                }
                out.write((answer + "\r\n").getBytes(StandardCharsets.US_ASCII));
                if (answer.startsWith("354")) {
                    skipTheText(in);
                    // the dot that ends the text is a command of its own here
                    var last = ".".startsWith(command) ? reply : "250 taken";
                    if (last.equals(HANG_UP)) {
                        return;
                    }
                    out.write((last + "\r\n").getBytes(StandardCharsets.US_ASCII));
                }
            }
        } catch (IOException theOtherSideWent) {
            // the test looks at what the postman made of it
        }
    }

    private static void skipTheText(BufferedReader in) throws IOException {
        for (var line = in.readLine(); line != null && !line.equals("."); line = in.readLine()) {
            continue;
        }
    }

    @ParameterizedTest(name = "{0} answered by {1}")
    @CsvSource({
        "RCPT, 550 no such person, address-refused, true,  false",
        "RCPT, 451 come back,      busy,            false, false",
        "MAIL, 553 not you,        refused,         true,  false",
        "MAIL, 421 closing,        busy,            false, false",
        ".,    554 no,             refused,         true,  false",
        ".,    452 full,           busy,            false, false",
        ".,    hang up,            broken-off,      false, true"
    })
    void readsTheAnswer(String command, String reply, String reason, boolean forGood, boolean doubtful)
            throws Exception {
        var notTaken = deliverTo(command, reply);
        assertThat(notTaken.reason()).isEqualTo(reason);
        assertThat(notTaken.isForGood()).isEqualTo(forGood);
        assertThat(notTaken.isDoubtful()).isEqualTo(doubtful);
    }

    @Test
    void isSilentWhenTheServerSaysYes() throws Exception {
        assertThat(deliverTo("NOTHING", "")).isNull();
    }

    @Test
    void isSureThatNothingWentWhenNobodyListens() throws Exception {
        int port;
        try (var closed = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = closed.getLocalPort();
        }
        var notTaken = deliver(port);
        assertThat(notTaken.reason()).isEqualTo("no-connection");
        assertThat(notTaken.isForGood()).isFalse();
        assertThat(notTaken.isDoubtful()).isFalse();
    }

    @Test
    void carriesNoAddressAndNoText() throws Exception {
        assertThat(deliverTo("RCPT", "550 pat@family.example is unknown"))
                .hasMessage("address-refused")
                .hasNoCause();
    }
}
