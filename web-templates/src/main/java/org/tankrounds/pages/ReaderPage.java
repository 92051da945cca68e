package org.tankrounds.pages;

import java.util.List;

/**
 * What somebody without an account reads by a link.
 *
 * @param lead when it was frozen, for whom the link is and how long it opens this
 */
public record ReaderPage(String title, String chapter, String lead, List<FrozenPage.File> files) implements Page {}
