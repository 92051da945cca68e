package org.tankrounds.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Paper looks the same on every machine: fonts come from the library and from nowhere else. It also saves a first
 * paper the seconds that looking through all of a machine's fonts takes.
 */
final class BuiltInFonts implements FontMapper {
    private static final String LIBERATION_SANS = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private final TrueTypeFont font;

    private BuiltInFonts(TrueTypeFont font) {
        this.font = font;
    }

    /** For the whole process, since the library knows only one place to look. */
    static void useEverywhere() {
        try (InputStream in = open()) {
            FontMappers.set(new BuiltInFonts(new TTFParser().parse(new RandomAccessReadBuffer(in))));
        } catch (IOException e) {
            throw new UncheckedIOException("the library's own font cannot be read", e);
        }
    }

    /** A font for the letters and signs that the fourteen standard fonts lack. */
    static InputStream open() {
        return BuiltInFonts.class.getResourceAsStream(LIBERATION_SANS);
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String baseFont, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String baseFont, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public CIDFontMapping getCIDFont(String baseFont, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
        return new CIDFontMapping(null, font, false);
    }
}
