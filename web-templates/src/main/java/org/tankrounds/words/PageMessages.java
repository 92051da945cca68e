package org.tankrounds.words;

import org.thymeleaf.context.ITemplateContext;
import org.thymeleaf.messageresolver.AbstractMessageResolver;

/** What stands for {@code #{key(…)}} in a template, in the language that the page is printed in. */
public final class PageMessages extends AbstractMessageResolver {

    @Override
    public String resolveMessage(ITemplateContext context, Class<?> origin, String key, Object[] parameters) {
        Object[] with = parameters == null ? new Object[0] : parameters;
        return Words.in(Language.of(context.getLocale())).say(key, with);
    }

    @Override
    public String createAbsentMessageRepresentation(
            ITemplateContext context, Class<?> origin, String key, Object[] parameters) {
        throw new IllegalArgumentException("no message is called " + key);
    }
}
