package org.hearthway.paper.internal;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.slf4j.Slf4jLogger;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Objects;
import org.hearthway.base.Language;
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/** Writes a page of ours as PDF, with its letters embedded and its structure tagged for screen readers. */
@Component
class SheetPrinter {

    private static final String FONTS = "/fonts/";

    private final ITemplateEngine templates;

    SheetPrinter(ITemplateEngine templates) {
        this.templates = templates;
        XRLog.setLoggerImpl(new Slf4jLogger());
    }

    /**
     * Prints.
     *
     * @param template must be well-formed XML when filled in
     * @param model what it shows
     */
    byte[] print(String template, Language language, Map<String, Object> model) {
        var page = templates.process(template, new Context(language.locale(), model));
        var out = new ByteArrayOutputStream();
        try {
            new PdfRendererBuilder()
                    .useFastMode()
                    .usePdfUaAccessibility(true)
                    .useFont(() -> font("AtkinsonHyperlegibleNext-Regular"), "Sheet", 400, NORMAL, true)
                    .useFont(() -> font("AtkinsonHyperlegibleNext-Bold"), "Sheet", 700, NORMAL, true)
                    // names in other alphabets
                    .useFont(() -> font("DejaVuSans"), "Wide", 400, NORMAL, true)
                    .useFont(() -> font("DejaVuSans-Bold"), "Wide", 700, NORMAL, true)
                    .withHtmlContent(page, null)
                    .toStream(out)
                    .run();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    private static final PdfRendererBuilder.FontStyle NORMAL = PdfRendererBuilder.FontStyle.NORMAL;

    private static InputStream font(String name) {
        return Objects.requireNonNull(SheetPrinter.class.getResourceAsStream(FONTS + name + ".ttf"), name);
    }
}
