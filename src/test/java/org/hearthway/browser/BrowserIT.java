package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.net.httpserver.HttpServer;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The walks stand on these steps, so the steps themselves are tried on a small page first. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BrowserIT {

    private static final String PAGE = """
            <!DOCTYPE html><html lang="en"><head><title>Try</title>
            <meta name="viewport" content="width=device-width"></head><body><main><h1>Try</h1>
            <label for="n">Name</label><input id="n">
            <button onclick="setTimeout(() => said.textContent = 'Hello ' + n.value, 300)">Greet</button>
            <p id="said"></p></main></body></html>""";

    private HttpServer server;
    private Browser phone;

    @BeforeAll
    void begin() throws Exception {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> {
            var wide = exchange.getRequestURI().getPath().equals("/wide");
            var page = (wide ? PAGE.replace("<p ", "<img src='x'><div style='width:500px'>wide</div><p ") : PAGE)
                    .getBytes(StandardCharsets.UTF_8);
            exchange.getResponseHeaders().add("Content-Type", "text/html;charset=utf-8");
            exchange.sendResponseHeaders(200, page.length);
            exchange.getResponseBody().write(page);
            exchange.close();
        });
        server.start();
        phone = Browser.phone("http://localhost:" + server.getAddress().getPort());
    }

    @AfterAll
    void end() {
        phone.close();
        server.stop(0);
    }

    @Test
    void findsByWordsAndWaitsForWhatComes() {
        phone.open("/").type("Name", "Juno").press("Greet").see("Hello Juno").accessible("a plain page");
        assertThat(phone.value("Name")).isEqualTo("Juno");
        assertThat(phone.run("return innerWidth")).isEqualTo(390L);
        phone.fitsItsWidth("a plain page");
    }

    @Test
    void seesWhatIsWrongWithAPage() {
        phone.open("/wide");
        assertThatThrownBy(() -> phone.accessible("the wide page")).hasMessageContaining("image-alt");
        assertThatThrownBy(() -> phone.fitsItsWidth("the wide page")).hasMessageContaining("sideways");
    }
}
