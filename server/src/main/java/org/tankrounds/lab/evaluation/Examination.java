package org.tankrounds.lab.evaluation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * What was asked in seasons played, what each voice said to it, and what the tanks went through.
 *
 * @param everyNth school morning was asked about
 * @param voices with one answer to each question, in the same order
 * @param touched which tanks a source tells anything of, by the name of the voice that goes without it
 */
public record Examination(int everyNth, List<Question> questions, List<Voice> voices,
        List<TankCourse> courses, Map<String, Set<LabTank>> touched) {

    /** Several as one; all have the same voices. */
    public static Examination joined(List<Examination> parts) {
        Examination first = parts.get(0);
        List<Voice> voices = IntStream.range(0, first.voices.size()).mapToObj(v -> new Voice(
                first.voices.get(v).name(), first.voices.get(v).tellsChance(),
                all(parts, part -> part.voices.get(v).answers()))).toList();
        return new Examination(first.everyNth, all(parts, Examination::questions), voices,
                all(parts, Examination::courses), touched(parts));
    }

    private static <T> List<T> all(List<Examination> parts, Function<Examination, List<T>> of) {
        return parts.stream().flatMap(part -> of.apply(part).stream()).toList();
    }

    private static Map<String, Set<LabTank>> touched(List<Examination> parts) {
        Map<String, Set<LabTank>> all = new LinkedHashMap<>();
        parts.forEach(part -> part.touched.forEach((name, tanks) ->
                all.computeIfAbsent(name, none -> new LinkedHashSet<>()).addAll(tanks)));
        return all;
    }

    /** Only the questions and courses of some tanks. */
    Examination of(Predicate<LabTank> tanks) {
        int[] picked = IntStream.range(0, questions.size())
                .filter(i -> tanks.test(questions.get(i).tank())).toArray();
        List<Question> some = new ArrayList<>(picked.length);
        for (int i : picked) {
            some.add(questions.get(i));
        }
        return new Examination(everyNth, some, voices.stream().map(voice -> voice.at(picked)).toList(),
                courses.stream().filter(course -> tanks.test(course.tank())).toList(), touched);
    }

    /** The worlds asked about, in order. */
    List<String> worlds() {
        return questions.stream().map(question -> question.tank().world()).distinct().toList();
    }

    Voice voice(String name) {
        return voices.stream().filter(voice -> voice.name().equals(name)).findFirst().orElseThrow();
    }

    Answered answered(Voice voice) {
        return Answered.of(questions, voice);
    }
}
