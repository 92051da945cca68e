package org.tankrounds.demo;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/** What opens the demo: the only place where its passwords and tokens stand in plain text. A stable file format. */
@JsonIgnoreProperties(ignoreUnknown = true)
public record DemoAccess(String baseUrl, List<ChapterAccess> chapters) {

    @JsonIgnoreProperties(ignoreUnknown = true)
    public record ChapterAccess(
            String code, String name, List<PersonAccess> people, String chapterToken, List<SeasonAccess> seasons,
            List<TankAccess> tanks) {}

    @JsonIgnoreProperties(ignoreUnknown = true)
    public record PersonAccess(String email, String password, String role) {}

    @JsonIgnoreProperties(ignoreUnknown = true)
    public record SeasonAccess(String code) {}

    /** @param classCard the code of its class card; absent for a tank that has none */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    @JsonIgnoreProperties(ignoreUnknown = true)
    public record TankAccess(String code, String school, String token, String classCard) {}

    public DemoAccess at(String newBaseUrl) {
        return new DemoAccess(newBaseUrl, chapters);
    }

    /** Whether it holds all that a demo has: nothing was cut off or taken out by hand. */
    boolean isComplete() {
        return chapters != null && chapters.size() == DemoScenario.chapters().size()
                && chapters.stream().allMatch(DemoAccess::isComplete);
    }

    private static boolean isComplete(ChapterAccess chapter) {
        return chapter.code() != null && chapter.chapterToken() != null
                && hasAll(chapter.seasons()) && hasAll(chapter.people()) && hasAll(chapter.tanks())
                && chapter.people().stream().allMatch(person -> person.email() != null && person.password() != null)
                && chapter.tanks().stream().allMatch(tank -> tank.code() != null && tank.token() != null);
    }

    private static boolean hasAll(List<?> things) {
        return things != null && !things.isEmpty();
    }
}
