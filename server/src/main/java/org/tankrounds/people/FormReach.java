package org.tankrounds.people;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tankrounds.db.Transactions;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Caller;

/**
 * Whether what one person typed is for a tank of whoever is signed in now: anybody else would be told there is none.
 */
public final class FormReach {
    private static final Pattern TANK = Pattern.compile("/(?:places/)?tanks/([^/?]+).*");

    private final Transactions transactions;
    private final TankRepository tanks;

    public FormReach(Transactions transactions, TankRepository tanks) {
        this.transactions = transactions;
        this.tanks = tanks;
    }

    boolean reaches(Caller caller, String path) {
        Matcher tank = TANK.matcher(path);
        return !tank.matches() || transactions.inChapter(
                caller.chapterId(), tx -> tanks.find(tx, caller, tank.group(1)).isPresent());
    }
}
