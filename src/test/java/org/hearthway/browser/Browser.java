package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.TimeoutException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * One person's browser. Things are found by the words a person sees: a button by its words, a field by its label.
 * Every step waits for a state, never for a length of time.
 */
public final class Browser implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofSeconds(15);

    /** Finds what is visible by what it is called; walks into open shadow trees, prefers what was drawn last. */
    private static final String FIND = """
            const [selector, wanted] = arguments;
            const plain = s => (s || '').replace(/\\s+/g, ' ').trim();
            const seen = e => { const b = e.getBoundingClientRect(); const s = getComputedStyle(e);
              return b.width > 0 && b.height > 0 && s.visibility !== 'hidden'; };
            const all = [...document.querySelectorAll(selector)].filter(seen);
            const called = e => [e.getAttribute('aria-label'), e.innerText, e.getAttribute('title'), e.value].map(plain);
            const exact = all.filter(e => called(e).includes(wanted));
            const begins = all.filter(e => called(e).some(c => c.startsWith(wanted)));
            const within = all.filter(e => called(e).some(c => c.includes(wanted)));
            const best = [exact, begins, within].find(l => l.length) || [];
            return best[0] || null;""";

    private static final String FIELD = """
            const [wanted] = arguments;
            const plain = s => (s || '').replace(/\\s+/g, ' ').replace(/\\s*[*•]$/, '').trim();
            const seen = e => { const b = e.getBoundingClientRect(); return b.width > 0 && b.height > 0; };
            const fields = [...document.querySelectorAll('input,textarea,select')].filter(seen);
            const names = e => [e.getAttribute('aria-label'), e.placeholder, e.name,
              ...[...(e.labels || [])].map(l => l.innerText),
              ...(e.getAttribute('aria-labelledby') || '').split(' ')
                .map(id => (id && document.getElementById(id) || {}).innerText)].map(plain);
            return fields.find(e => names(e).includes(wanted))
              || fields.find(e => names(e).some(n => n.startsWith(wanted))) || null;""";

    private static final String IDLE = """
            const flow = window.Vaadin && window.Vaadin.Flow;
            if (document.readyState !== 'complete') return false;
            if (!flow || !flow.clients) return true;
            return Object.values(flow.clients).every(c => !c.isActive || !c.isActive());""";

    /** Not innerWidth: a phone zooms out until everything fits. */
    private static final String AS_WIDE_AS = "return document.documentElement.clientWidth === arguments[0]";

    private static final String AXE = axe();

    /** Whether nothing that ends is still moving, notes that fade in within their shadow trees included. */
    private static final String AT_REST = """
            const shown = [document, ...[...document.querySelectorAll('vaadin-notification-card')].map(n => n.shadowRoot)];
            return shown.filter(root => root)
                .flatMap(root => root.getAnimations())
                .every(a => a.playState !== 'running' || a.effect.getComputedTiming().endTime === Infinity);
            """;

    /** The style sheets need no second fetch: the one rule that reads them is experimental and does not run. */
    private static final String FINDINGS = """
            const tell = arguments[arguments.length - 1];
            axe.run({exclude: ['vaadin-connection-indicator']}, {resultTypes: ['violations'], iframes: false,
                preload: {assets: ['media']}, rules: {'color-contrast': {enabled: arguments[0]}}}).then(
              r => tell(r.violations.map(v => v.id + ': ' + v.help + ' at '
                + v.nodes.slice(0, 3).map(n => n.html).join(' | '))),
              e => tell([String(e)]));""";

    private static final String CLOCK = """
            {
              const Real = Date;
              globalThis.Date = class extends Real {
                constructor(...given) { super(...(given.length ? given : [Real.now() + AHEAD])); }
                static now() { return Real.now() + AHEAD; }
              };
            }""";

    private final ChromeDriver driver;
    private final String root;
    private int width;
    private @org.jspecify.annotations.Nullable String clock;

    static {
        // the driver knows newer browsers than its protocol bindings do; nothing here needs them
        Logger.getLogger("org.openqa.selenium").setLevel(Level.SEVERE);
    }

    private Browser(String root, int width, int height, boolean touch) {
        this.root = root;
        this.driver = new ChromeDriver(service(), options());
        resize(width, height, touch);
    }

    /** A phone, 390 by 844. */
    public static Browser phone(RunningClinic clinic) {
        return new Browser(clinic.url(), 390, 844, true);
    }

    /** A desk, 1280 by 800. */
    public static Browser desk(RunningClinic clinic) {
        return new Browser(clinic.url(), 1280, 800, false);
    }

    /** A phone that looks at another server than a clinic of ours. */
    static Browser phone(String root) {
        return new Browser(root, 390, 844, true);
    }

    private static ChromeDriverService service() {
        var service = new ChromeDriverService.Builder().withSilent(true);
        onPath("chromedriver").ifPresent(service::usingDriverExecutable);
        return service.build();
    }

    private static ChromeOptions options() {
        var options = new ChromeOptions();
        onPath("chromium").ifPresent(options::setBinary);
        return options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--disable-dev-shm-usage",
                // a page that was left needs no renderer of its own, and nothing moves by itself
                "--disable-features=BackForwardCache,SpareRendererForSitePerProcess",
                "--force-prefers-reduced-motion",
                "--hide-scrollbars",
                "--lang=en-US");
    }

    private static Optional<File> onPath(String name) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> new File(folder, name))
                .filter(File::canExecute)
                .findFirst();
    }

    /** Takes another size, by the browser's protocol: a headless window may refuse to be narrow. The page stays open. */
    public void resize(int width, int height, boolean touch) {
        this.width = width;
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", touch));
        driver.executeCdpCommand("Emulation.setTouchEmulationEnabled", Map.of("enabled", touch));
        if (!String.valueOf(driver.getCurrentUrl()).startsWith("http")) {
            // the size shows only once a page is there
            driver.get("data:text/html,<meta name=viewport content='width=device-width'>");
            assertThat(((Number) run("return innerWidth")).intValue()).isEqualTo(width);
        }
        waitFor("the width " + width, () -> Boolean.TRUE.equals(run(AS_WIDE_AS, width)));
    }

    /** Opens a place of the program, such as {@code /call}, or a whole address. */
    public Browser open(String place) {
        driver.get(place.startsWith("http") ? place : root + place);
        return settle();
    }

    /** Goes to a place of the program as its own links do, without loading everything again. */
    public Browser go(String place) {
        run("""
                const link = document.createElement('a');
                link.href = arguments[0];
                document.body.append(link);
                link.click();
                link.remove();""", place);
        // a folder leads on to its first tab
        waitFor("the address " + place, () -> path().startsWith(place));
        return settle();
    }

    /** Forgets who was signed in, and everything else the program left in this browser. */
    public Browser forget() {
        driver.get("data:text/html,");
        driver.executeCdpCommand("Network.clearBrowserCookies", Map.of());
        driver.executeCdpCommand("Storage.clearDataForOrigin", Map.of("origin", root, "storageTypes", "all"));
        return this;
    }

    /** Opens the place again. */
    public Browser reload() {
        driver.navigate().refresh();
        return settle();
    }

    /** Waits until the program has answered all that was asked of it. */
    public Browser settle() {
        waitFor("an answer of the program", () -> Boolean.TRUE.equals(run(IDLE)));
        return this;
    }

    /** Presses what is called so: a button, a link, a box to tick, a tab. */
    public Browser press(String words) {
        act(words, () -> {
            var found = (WebElement) run(
                    FIND,
                    "button,a,summary,label,input[type=submit],input[type=checkbox],input[type=radio],option,"
                            + "[role=button],[role=tab],[role=option],[role=checkbox],[role=radio],[role=menuitem],"
                            + "[role=link],vaadin-button,vaadin-checkbox,vaadin-radio-button,vaadin-combo-box-item,"
                            + "vaadin-select-item,vaadin-item,.hw-tick",
                    words);
            return found == null ? null : found;
        });
        return settle();
    }

    /** Presses the first thing that a style selector finds and that is visible. */
    public Browser pressAt(String selector) {
        act(
                selector,
                () -> driver.findElements(By.cssSelector(selector)).stream()
                        .filter(WebElement::isDisplayed)
                        .findFirst()
                        .orElse(null));
        return settle();
    }

    private interface Finder {
        @org.jspecify.annotations.Nullable
        WebElement find();
    }

    private void act(String what, Finder finder) {
        waitFor("something to press called " + what, () -> {
            var found = finder.find();
            if (found == null) {
                return false;
            }
            run("arguments[0].scrollIntoView({block: 'center'})", found);
            try {
                found.click();
            } catch (org.openqa.selenium.ElementClickInterceptedException covered) {
                return false;
            } catch (org.openqa.selenium.ElementNotInteractableException notYet) {
                return false;
            }
            return true;
        });
    }

    /** Types into the field with this label, in place of what stands there, and leaves it. */
    public Browser type(String label, String text) {
        var field = field(label);
        run("arguments[0].scrollIntoView({block: 'center'})", field);
        if (field.getTagName().equals("select")) {
            new org.openqa.selenium.support.ui.Select(field).selectByVisibleText(text);
            return settle();
        }
        var kind = Optional.ofNullable(field.getDomAttribute("type")).orElse("text");
        if (List.of("date", "time", "datetime-local").contains(kind)) {
            run("""
                    const [e, v] = arguments; e.focus(); e.value = v;
                    e.dispatchEvent(new Event('input', {bubbles: true}));
                    e.dispatchEvent(new Event('change', {bubbles: true}));""", field, text);
            return settle();
        }
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE);
        // in one go, as a phone's keyboard puts in a word: key by key takes many times as long
        driver.executeCdpCommand("Input.insertText", Map.of("text", text));
        field.sendKeys(Keys.TAB);
        return settle();
    }

    /** Presses keys where the keys are. */
    public Browser pressKeys(CharSequence... keys) {
        driver.switchTo().activeElement().sendKeys(keys);
        return settle();
    }

    /** The field with this label. */
    public WebElement field(String label) {
        return until("a field labelled " + label, () -> (WebElement) run(FIELD, label));
    }

    /** What stands in the field with this label. */
    public String value(String label) {
        return String.valueOf(field(label).getDomProperty("value"));
    }

    /** Waits until the words stand on the page, visible. */
    public Browser see(String words) {
        waitFor("the words \"" + words + "\"", () -> text().contains(words));
        return this;
    }

    /** Waits until the words no longer stand on the page. */
    public Browser seeNoMore(String words) {
        waitFor("the words \"" + words + "\" to go", () -> !text().contains(words));
        return this;
    }

    /** Waits until the address ends so. */
    public Browser at(String place) {
        waitFor("the address " + place, () -> path().equals(place));
        return settle();
    }

    /** The place, without host and question. */
    public String path() {
        return String.valueOf(run("return location.pathname"));
    }

    /** All words that are visible, white space folded. */
    public String text() {
        return String.valueOf(run("return document.body ? document.body.innerText : ''"))
                .replaceAll("\\s+", " ");
    }

    /** What a style selector finds, visible or not. */
    public List<WebElement> all(String selector) {
        return driver.findElements(By.cssSelector(selector));
    }

    /** Runs a script of the test in the page. */
    public @org.jspecify.annotations.Nullable Object run(String script, Object... args) {
        return ((JavascriptExecutor) driver).executeScript(script, args);
    }

    /** Cuts the network off, or lets it in again. */
    public Browser offline(boolean off) {
        driver.executeCdpCommand("Network.enable", Map.of());
        driver.executeCdpCommand(
                "Network.emulateNetworkConditions",
                Map.of("offline", off, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
        return this;
    }

    /** Sets this phone's clock, for pages that are opened from now on; it runs on from there. */
    public Browser clockAt(Instant at) {
        if (clock != null) {
            driver.executeCdpCommand("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", clock));
        }
        var ahead = at.toEpochMilli() - System.currentTimeMillis();
        var script = CLOCK.replace("AHEAD", String.valueOf(ahead));
        clock = (String) driver.executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", script))
                .get("identifier");
        return this;
    }

    /** Lets pages move, which for most walks is not wanted, so that nothing must be waited for. */
    public Browser inMotion() {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-reduced-motion", "value", "no-preference"))));
        return this;
    }

    /** Fails with the rule and the place for everything that axe-core finds wrong with this page. */
    public Browser accessible(String page) {
        return accessible(page, true);
    }

    /** The same; to look at the contrast of every word is most of the work, and can be left out where it was done. */
    public Browser accessible(String page, boolean contrast) {
        if (!Boolean.TRUE.equals(run("return !!window.axe"))) {
            run(AXE);
        }
        // what is just fading in has not its colors yet
        waitFor("what moves to come to rest", () -> Boolean.TRUE.equals(run(AT_REST)));
        assertThat((List<?>) driver.executeAsyncScript(FINDINGS, contrast))
                .as("what axe-core finds on " + page)
                .isEmpty();
        return this;
    }

    /**
     * What stands between head and foot of the page, its size with it, but for the names that tie parts together: axe-core
     * finds the same on pages of which this is the same.
     */
    String fingerprint() {
        return width + " " + run("""
                return (document.getElementById('main') || document.body).outerHTML
                    .replace(/ (id|for|name|aria-(labelledby|describedby|controls))="[^"]*"/g, '')""");
    }

    private static String axe() {
        try (var script = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
            return new String(script.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Fails when the page can be pushed sideways. */
    public Browser fitsItsWidth(String page) {
        // not innerWidth: a phone zooms out until everything fits
        assertThat(((Number) run("return document.documentElement.scrollWidth")).intValue())
                .as(page + " scrolls sideways")
                .isLessThanOrEqualTo(width);
        return this;
    }

    /** Writes a picture of the page as the person sees it, where pictures are asked for: they take a while. */
    public Browser picture(Path file) {
        if (!Boolean.getBoolean("hearthway.pictures")) {
            return this;
        }
        try {
            Files.createDirectories(file.getParent());
            Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** All words of the page as it would be printed on A4. */
    public String printed() {
        var answer = driver.executeCdpCommand("Page.printToPDF", Map.of("paperWidth", 8.27, "paperHeight", 11.69));
        try (var paper = Loader.loadPDF(Base64.getDecoder().decode(String.valueOf(answer.get("data"))))) {
            return new PDFTextStripper().getText(paper).replaceAll("\\s+", " ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Opens a second tab of the same person and goes there; tabs are counted from 0. */
    public Browser newTab() {
        driver.switchTo().newWindow(org.openqa.selenium.WindowType.TAB);
        return this;
    }

    /** Goes to a tab, counted from 0 in the order they were opened. */
    public Browser tab(int number) {
        driver.switchTo().window(List.copyOf(driver.getWindowHandles()).get(number));
        return settle();
    }

    /** Waits until the condition holds. */
    public void waitFor(String what, java.util.function.BooleanSupplier condition) {
        until(what, () -> condition.getAsBoolean() ? Boolean.TRUE : null);
    }

    private <T> T until(String what, java.util.function.Supplier<@org.jspecify.annotations.Nullable T> found) {
        try {
            return new WebDriverWait(driver, PATIENCE, Duration.ofMillis(50))
                    .ignoring(StaleElementReferenceException.class)
                    .ignoring(org.openqa.selenium.JavascriptException.class)
                    .until(d -> found.get());
        } catch (TimeoutException late) {
            var shot = Path.of("target", "screens", "failed-" + System.nanoTime() + ".png");
            picture(shot);
            throw new AssertionError(
                    "waited in vain for " + what + " at " + path() + " (picture " + shot + "); the page says: "
                            + text(),
                    late);
        }
    }

    @Override
    public void close() {
        driver.quit();
    }
}
