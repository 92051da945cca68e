package org.tankrounds.people;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.TokensPage;
import org.tankrounds.places.Tank;

/** From tokens to what their page prints. */
final class TokenPages {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMM uuuu, H:mm", Locale.ENGLISH);

    private TokenPages() {}

    static TokensPage list(List<Token> tokens, List<Tank> tanks, ZoneId zone, FormField label, FormField opens) {
        Map<String, String> names = tanks.stream().collect(Collectors.toMap(Tank::code, PersonPages::label));
        List<TokensPage.Row> rows = tokens.stream().map(token -> row(token, names, zone)).toList();
        return new TokensPage(
                rows.stream().filter(row -> row.revoked().isEmpty()).toList(),
                rows.stream().filter(row -> !row.revoked().isEmpty()).toList(), label, opens);
    }

    private static TokensPage.Row row(Token token, Map<String, String> names, ZoneId zone) {
        String opens = token.tank().map(code -> names.getOrDefault(code, "tank " + code)).orElse("the whole chapter");
        return new TokensPage.Row(token.tokenId(), token.label(), opens,
                when(Optional.of(token.createdAt()), zone, ""),
                when(token.lastUsedAt(), zone, "never"),
                when(token.revokedAt(), zone, ""));
    }

    private static String when(Optional<Instant> time, ZoneId zone, String otherwise) {
        return time.map(instant -> WHEN.format(instant.atZone(zone))).orElse(otherwise);
    }
}
