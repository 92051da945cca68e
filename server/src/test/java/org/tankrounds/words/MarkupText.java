package org.tankrounds.words;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.attoparser.ParseException;
import org.attoparser.config.ParseConfiguration;
import org.attoparser.dom.DOMMarkupParser;
import org.attoparser.dom.Element;
import org.attoparser.dom.INestableNode;
import org.attoparser.dom.INode;
import org.attoparser.dom.Text;

/** What a template shows of its own: its text, but for the examples that are replaced when it is printed. */
final class MarkupText {
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");
    private static final Pattern QUOTED = Pattern.compile("'[^']*\\p{L}{2,}[,:;]? [^']*'");
    private static final Set<String> REPLACE = Set.of("th:text", "th:utext", "th:replace", "th:insert");
    private static final Set<String> SHOWN = Set.of("title", "aria-label", "placeholder", "alt");
    private static final String OUR_NAME = "Tankrounds";

    private final List<String> shown = new ArrayList<>();

    private MarkupText() {}

    static List<String> shown(String template) {
        MarkupText text = new MarkupText();
        text.children(parsed(template));
        return text.shown;
    }

    private static INestableNode parsed(String template) {
        try {
            return new DOMMarkupParser(ParseConfiguration.htmlConfiguration()).parse(new StringReader(template));
        } catch (ParseException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private void children(INestableNode parent) {
        for (INode child : parent.getChildren()) {
            if (child instanceof Text text) {
                add(text.getContent());
            } else if (child instanceof Element element) {
                element(element);
            }
        }
    }

    private void element(Element element) {
        Map<String, String> attributes = element.getAttributeMap();
        attributes.forEach((name, value) -> {
            if (SHOWN.contains(name) && !String.valueOf(attributes.get("th:attr")).contains(name + "=")) {
                add(value);
            } else if (name.startsWith("th:")) {
                QUOTED.matcher(value).results().map(MatchResult::group).forEach(shown::add);
            }
        });
        if (attributes.entrySet().stream().noneMatch(MarkupText::replacesContent)) {
            children(element);
        }
    }

    /** What names a part of the same file prints that part. */
    private static boolean replacesContent(Map.Entry<String, String> attribute) {
        return REPLACE.contains(attribute.getKey()) && !attribute.getValue().contains("{:: ");
    }

    private void add(String text) {
        if (WORD.matcher(text.replace(OUR_NAME, "")).find()) {
            shown.add(text.strip());
        }
    }
}
