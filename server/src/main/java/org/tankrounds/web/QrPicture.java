package org.tankrounds.web;

import io.nayuki.qrcodegen.QrCode;
import java.util.ArrayList;
import java.util.List;
import org.tankrounds.pages.QrSquare;

/** An address as a square that phones read, drawn as plain runs of dark modules. */
public final class QrPicture {
    /** Light modules that must stand around it: ISO/IEC 18004, 6.3.8. */
    private static final int MARGIN = 4;

    private QrPicture() {}

    /** A quarter of it may be smudged or torn: it hangs beside water. */
    public static QrSquare of(String text) {
        QrCode code = QrCode.encodeText(text, QrCode.Ecc.QUARTILE);
        List<QrSquare.Run> runs = new ArrayList<>();
        for (int y = 0; y < code.size; y++) {
            addRow(code, y, runs);
        }
        return new QrSquare(code.size + 2 * MARGIN, List.copyOf(runs));
    }

    private static void addRow(QrCode code, int y, List<QrSquare.Run> runs) {
        int x = 0;
        while (x < code.size) {
            int from = x;
            while (x < code.size && code.getModule(x, y)) {
                x++;
            }
            if (x > from) {
                runs.add(new QrSquare.Run(from + MARGIN, y + MARGIN, x - from));
            }
            x++;
        }
    }
}
