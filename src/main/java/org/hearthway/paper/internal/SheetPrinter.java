package org.hearthway.paper.internal;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.hearthway.base.Language;
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/** Writes a page of ours as PDF, with its letters embedded and its structure tagged for screen readers. */
@Component
class SheetPrinter {

    private static final String FONTS = "/fonts/";

    /** What XML 1.0 cannot carry, however it is written; a person may have pasted it. */
    private static final Pattern NOT_IN_XML =
            Pattern.compile("[^\\x09\\x0A\\x0D\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]");

    /** Sizes of the letters in points: the usual one, then smaller ones for a sheet that has more to say than most. */
    private static final List<String> LETTERS = List.of("9.1", "8.4", "7.7", "7", "6.3", "5.6", "5");

    private final ITemplateEngine templates;

    SheetPrinter(ITemplateEngine templates) {
        this.templates = templates;
    }

    /**
     * Prints on one page, in letters of the usual size if they fit.
     *
     * @param template must be well-formed XML when filled in, its letters in {@code ${letters}} points
     * @param model what it shows besides
     */
    byte[] onOnePage(String template, Language language, Map<String, Object> model) {
        return onOnePage(template, language, model, LETTERS);
    }

    /** The same with other sizes of letters, in points, the usual one first. */
    byte[] onOnePage(String template, Language language, Map<String, Object> model, List<String> sizes) {
        var sized = new HashMap<>(model);
        var pdf = new byte[0];
        for (var letters : sizes) {
            sized.put("letters", letters);
            pdf = print(template, language, sized);
            if (pages(pdf) == 1) {
                return pdf;
            }
        }
        return pdf;
    }

    private static int pages(byte[] pdf) {
        try (var document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private byte[] print(String template, Language language, Map<String, Object> model) {
        var filled = templates.process(template, new Context(language.locale(), model));
        var page = NOT_IN_XML.matcher(filled).replaceAll("");
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

    private static final FontStyle NORMAL = FontStyle.NORMAL;

    private static InputStream font(String name) {
        return Objects.requireNonNull(SheetPrinter.class.getResourceAsStream(FONTS + name + ".ttf"), name);
    }
}
