package org.tankrounds.summary;

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
import org.tankrounds.pages.SummaryPage;

/** The summary on paper: a page of its own, laid out for A4 and Letter alike, with nothing fetched from anywhere. */
public final class SummaryPaper {
    private static final String STYLES = "/paper/summary.css";

    static {
        BuiltInFonts.useEverywhere();
        XRLog.setLoggingEnabled(false);
    }

    private final Printer printer;

    /** Prints a page record with a template; what the web's pages do, without a request. */
    @FunctionalInterface
    public interface Printer {
        String print(String template, Page page, Frame frame);
    }

    public SummaryPaper(Printer printer) {
        this.printer = printer;
    }

    byte[] write(SummaryPage page) {
        Frame frame = new Frame(page.title(), "", "", "", "", "", List.of(), "", name -> styles());
        String html = printer.print("summary/paper", page, frame);
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
            throw new UncheckedIOException("the summary cannot be laid out", e);
        }
        return bytes.toByteArray();
    }

    private static String styles() {
        try (InputStream in = SummaryPaper.class.getResourceAsStream(STYLES)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
