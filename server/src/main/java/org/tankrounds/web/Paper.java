package org.tankrounds.web;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.tankrounds.pages.Frame;
import org.tankrounds.pages.Page;
import org.tankrounds.words.Language;

/** A page record laid out on paper, with nothing fetched from anywhere. */
public final class Paper {
    static {
        BuiltInFonts.useEverywhere();
        XRLog.setLoggingEnabled(false);
    }

    private final Printer printer;

    /** Prints a page record with a template; what the web's pages do, without a request. */
    @FunctionalInterface
    public interface Printer {
        String print(String template, Page page, Frame frame, Language language);
    }

    public Paper(Printer printer) {
        this.printer = printer;
    }

    /**
     * @param template of paper, well-formed as XML
     * @param styles resource with the style sheet that the template puts into its head
     * @return a PDF
     */
    public byte[] write(String template, Page page, String styles, Language language) {
        Frame frame = new Frame(page.title(), "", "", "", "", "", "", List.of(), List.of(), "",
                name -> read(styles));
        String html = printer.print(template, page, frame, language);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            new PdfRendererBuilder()
                    .useFastMode()
                    .usePdfVersion(1.7f)
                    .withProducer("Tankrounds")
                    .useFont(BuiltInFonts::open, "Liberation Sans")
                    .useReplacementText("?")
                    .useExternalResourceAccessControl((uri, type) -> false,
                            ExternalResourceControlPriority
                                    .RUN_BEFORE_RESOLVING_URI)
                    .withHtmlContent(html, null)
                    .toStream(bytes)
                    .run();
        } catch (IOException e) {
            throw new UncheckedIOException(template + " cannot be laid out", e);
        }
        return bytes.toByteArray();
    }

    private static String read(String styles) {
        try (InputStream in = Paper.class.getResourceAsStream(styles)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
