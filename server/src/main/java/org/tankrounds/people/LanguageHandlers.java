package org.tankrounds.people;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import org.tankrounds.words.Language;

/** Another language for a browser on which nobody has chosen one in an account. */
public final class LanguageHandlers {
    private final Cookies cookies;

    public LanguageHandlers(Cookies cookies) {
        this.cookies = cookies;
    }

    /** A language that is not spoken here changes nothing. */
    public void choose(Context ctx) {
        Optional.ofNullable(ctx.formParam("language")).flatMap(Language::ofTag)
                .ifPresent(language -> cookies.remember(ctx, language));
        ctx.redirect(LocalPath.before(ctx), HttpStatus.SEE_OTHER);
    }
}
