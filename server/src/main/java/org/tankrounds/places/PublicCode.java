package org.tankrounds.places;

import java.util.function.ToIntFunction;
import org.tankrounds.web.Secrets;

/** Random codes for addresses, cards and files, drawn again where the chapter has one already. */
public final class PublicCode {
    private static final int LENGTH = 6;
    private static final int TRIES = 20;

    private PublicCode() {}

    /** @param insert writes the row under a code and says how many rows it wrote; 0 where the code is taken */
    public static String firstFree(ToIntFunction<String> insert) {
        for (int i = 0; i < TRIES; i++) {
            String code = Secrets.code(LENGTH);
            if (insert.applyAsInt(code) == 1) {
                return code;
            }
        }
        throw new IllegalStateException("no free code in " + TRIES + " tries");
    }
}
