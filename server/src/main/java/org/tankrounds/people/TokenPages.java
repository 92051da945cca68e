package org.tankrounds.people;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.TokensPage;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Formats;

/** From tokens to what their page prints. */
final class TokenPages {
    private final Formats formats;

    TokenPages(Formats formats) {
        this.formats = formats;
    }

    TokensPage list(List<Token> tokens, List<Tank> tanks, String title, FormField label, FormField opens) {
        Map<String, String> names = tanks.stream().collect(Collectors.toMap(Tank::code, PersonPages::label));
        List<TokensPage.Row> rows = tokens.stream().map(token -> row(token, names)).toList();
        return new TokensPage(title,
                rows.stream().filter(row -> row.revoked().isEmpty()).toList(),
                rows.stream().filter(row -> !row.revoked().isEmpty()).toList(), label, opens);
    }

    private TokensPage.Row row(Token token, Map<String, String> names) {
        String opens = token.tank().map(code -> names.getOrDefault(code, say("people.token.tank", code)))
                .orElseGet(() -> say("people.token.wholeChapter"));
        return new TokensPage.Row(token.tokenId(), token.label(), opens,
                formats.dateYearAndClock(token.createdAt()),
                token.lastUsedAt().map(formats::dateYearAndClock).orElseGet(() -> say("people.token.never")),
                token.revokedAt().map(formats::dateYearAndClock).orElse(""));
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
