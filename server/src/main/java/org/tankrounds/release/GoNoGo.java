package org.tankrounds.release;

import java.util.List;
import org.tankrounds.release.CheckAnswer.Word;
import org.tankrounds.words.Saying;

/** Whether a release may go ahead by what is known: any no says no, anything unknown says not yet. */
public record GoNoGo(List<Finding> findings) {

    public enum Verdict {
        GO, NOT_YET, NO_GO
    }

    /**
     * @param word yes where nothing stands in the way
     * @param what of what it speaks, or what is wrong with it
     * @param whatToDo where it is not yes
     * @param looked whether somebody has to look, as the list of lines asks
     */
    public record Finding(Word word, Saying what, Saying whatToDo, boolean looked) {}

    public GoNoGo {
        findings = List.copyOf(findings);
    }

    public Verdict verdict() {
        if (!against().isEmpty()) {
            return Verdict.NO_GO;
        }
        return open().isEmpty() ? Verdict.GO : Verdict.NOT_YET;
    }

    public List<Finding> against() {
        return with(Word.NO);
    }

    public List<Finding> open() {
        return with(Word.UNKNOWN);
    }

    private List<Finding> with(Word word) {
        return findings.stream().filter(finding -> finding.word() == word).toList();
    }
}
