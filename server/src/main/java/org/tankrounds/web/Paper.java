package org.tankrounds.web;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
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
        return write(template, page, styles, language, Optional.empty());
    }

    /** @param at the moment that the document names as its making; the same page then gives the same bytes */
    public byte[] write(String template, Page page, String styles, Language language, Optional<Instant> at) {
        Frame frame = new Frame(page.title(), "", "", "", "", "", "", List.of(), List.of(), "",
                name -> read(styles));
        String html = printer.print(template, page, frame, language);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = new PdfRendererBuilder()
                    .useFastMode()
                    .usePdfVersion(1.7f)
                    .withProducer("Tankrounds")
                    .useFont(BuiltInFonts::open, "Liberation Sans")
                    .useReplacementText("?")
                    .useExternalResourceAccessControl((uri, type) -> false,
                            ExternalResourceControlPriority
                                    .RUN_BEFORE_RESOLVING_URI)
                    .withHtmlContent(html, null)
                    .buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            PDDocument document = renderer.getPdfDocument();
            at.ifPresent(moment -> date(document, moment));
            document.save(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(template + " cannot be laid out", e);
        }
        return bytes.toByteArray();
    }

    private static void date(PDDocument document, Instant at) {
        GregorianCalendar moment = GregorianCalendar.from(at.atZone(ZoneOffset.UTC));
        document.getDocumentInformation().setCreationDate(moment);
        document.getDocumentInformation().setModificationDate(moment);
        document.setDocumentId(at.toEpochMilli());
    }

    private static String read(String styles) {
        try (InputStream in = Paper.class.getResourceAsStream(styles)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
