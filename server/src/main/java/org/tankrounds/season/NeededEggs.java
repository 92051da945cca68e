package org.tankrounds.season;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether what was written down of a tank needs the eggs of a lot to have been there. */
final class NeededEggs {
    private NeededEggs() {}

    /**
     * @param with the account as it stands
     * @param without the same without the lot
     */
    static boolean stand(Account with, Account without, Lot lot) {
        if (!entries(with).containsAll(entries(without))) {
            return true;
        }
        List<Account.Line> before = with.lines().stream()
                .filter(line -> line.lot().filter(lot::equals).isEmpty()).toList();
        List<Account.Line> after = without.lines();
        for (int i = 0; i < after.size(); i++) {
            if (isBeyond(before.get(i), after.get(i))) {
                return true;
            }
        }
        return false;
    }

    private static Set<Integer> entries(Account account) {
        return account.impossible().stream().map(CountEntry::entryId).collect(Collectors.toSet());
    }

    /** More died or left than the rest explains; or a count that fitted better with the eggs finds too many. */
    private static boolean isBeyond(Account.Line before, Account.Line after) {
        return switch (after.what()) {
            case DIED, MOVED_OUT, THINNED, RELEASED -> after.surplus() > before.surplus();
            case COUNTED -> after.surplus() > Math.abs(before.surplus());
            case RECEIVED, MOVED_IN, HATCHED -> false;
        };
    }
}
