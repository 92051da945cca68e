package org.tankrounds.season;

import java.util.Set;
import org.jooq.DSLContext;

/** Which lots came by a receipt, which alone takes them back. */
public interface LotReceipts {
    Set<Integer> lotIds(DSLContext tx, int chapterId);
}
