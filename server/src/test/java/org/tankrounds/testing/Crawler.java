package org.tankrounds.testing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Follows the links of every page, as far as one person gets, and leaves the forms alone. Of a long row of
 * addresses that differ only in their last part, such as a tank's readings, it opens some.
 */
public final class Crawler {
    private static final Pattern LINK = Pattern.compile("(?:href|src|data-[a-z-]+)=\"(/[^\"#]*)");
    private static final int MOST = 5_000;
    private static final int MOST_ALIKE = 14;

    private Crawler() {}

    /** @return what each address answered; those of redirects as well */
    public static Map<String, Browserless.Answer> crawl(Browserless browser, String start) {
        Map<String, Browserless.Answer> found = new LinkedHashMap<>();
        Map<String, Integer> alike = new HashMap<>();
        Deque<String> ahead = new ArrayDeque<>();
        ahead.add(start);
        while (!ahead.isEmpty()) {
            String address = ahead.remove();
            String row = address.substring(0, address.lastIndexOf('/'));
            boolean isAtTheTop = row.isEmpty() && address.indexOf('?') < 0;
            boolean isOfALongRow = !isAtTheTop && alike.merge(row, 1, Integer::sum) > MOST_ALIKE;
            if (found.containsKey(address) || isOfALongRow) {
                continue;
            }
            if (found.size() == MOST) {
                throw new IllegalStateException("there is no end to the pages: " + address);
            }
            Browserless.Answer answer = browser.get(address);
            found.put(address, answer);
            if (!answer.location().isEmpty()) {
                ahead.add(answer.location());
            }
            Matcher links = LINK.matcher(answer.body());
            while (links.find()) {
                ahead.add(links.group(1).replace("&amp;", "&"));
            }
        }
        return found;
    }
}
