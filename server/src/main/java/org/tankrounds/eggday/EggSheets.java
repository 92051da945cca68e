package org.tankrounds.eggday;

import java.util.ArrayList;
import java.util.List;
import org.tankrounds.pages.EggSheetPage;
import org.tankrounds.web.Formats;

/** An egg day on paper, for where nothing answers: the drive, the cooler, and receipts to sign. */
final class EggSheets {
    private final KnownRun known;
    private final EggWording wording;

    EggSheets(KnownRun known, Formats formats) {
        this.known = known;
        this.wording = new EggWording(formats);
    }

    EggSheetPage page() {
        String heading = wording.say("eggday.sheet.title", wording.formats().longDate(known.run().details().day()));
        return new EggSheetPage(heading, heading, known.address(), known.address() + "/sheet.pdf",
                wording.about(known, true), wording.formats().speech().scale().sign(), lines(), wording.bring(known),
                wording.rules(), wording.cautions());
    }

    private List<EggSheetPage.Line> lines() {
        List<EggSheetPage.Line> lines = new ArrayList<>();
        for (EggStop stop : known.stops()) {
            lines.add(new EggSheetPage.Line(lines.size() + 1, stop.plannedFor().map(wording::clock).orElse(""),
                    StopsForm.place(known.tank(stop)), wording.eggs(stop.eggs())));
        }
        return lines;
    }
}
