package org.tankrounds.readings.files;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.tankrounds.readings.files.UnreadableFileException.Trouble;

/** The bytes of a file as text, whichever of the usual encodings it was written in. */
final class FileText {
    private static final Charset OLD_DESKTOP = Charset.forName("windows-1252");

    private FileText() {}

    /** @throws UnreadableFileException where it is something else than text */
    static String of(byte[] bytes) {
        refuseOtherKinds(bytes);
        String text = decoded(bytes);
        if (text.isBlank()) {
            throw new UnreadableFileException(Trouble.EMPTY);
        }
        if (text.chars().anyMatch(FileText::isNoText)) {
            throw new UnreadableFileException(Trouble.NOT_TEXT);
        }
        return text;
    }

    private static void refuseOtherKinds(byte[] bytes) {
        if (startsWith(bytes, 'P', 'K', 3, 4) || startsWith(bytes, 'P', 'K', 5, 6)) {
            throw new UnreadableFileException(Trouble.ZIP);
        }
        if (startsWith(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
            throw new UnreadableFileException(Trouble.OLD_WORKBOOK);
        }
        if (startsWith(bytes, '%', 'P', 'D', 'F')) {
            throw new UnreadableFileException(Trouble.PDF);
        }
    }

    private static String decoded(byte[] bytes) {
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
            return new String(bytes, 3, bytes.length - 3, StandardCharsets.UTF_8);
        }
        if (startsWith(bytes, 0xFF, 0xFE)) {
            return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16LE);
        }
        if (startsWith(bytes, 0xFE, 0xFF)) {
            return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16BE);
        }
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            return new String(bytes, OLD_DESKTOP);
        }
    }

    private static boolean isNoText(int character) {
        return character < ' ' && character != '\t' && character != '\n' && character != '\r';
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        if (bytes.length < start.length) {
            return false;
        }
        for (int i = 0; i < start.length; i++) {
            if ((bytes[i] & 0xFF) != start[i]) {
                return false;
            }
        }
        return true;
    }
}
