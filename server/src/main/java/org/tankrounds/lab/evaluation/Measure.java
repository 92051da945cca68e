package org.tankrounds.lab.evaluation;

import java.util.function.BiFunction;

/** A score of answers; larger is better. */
enum Measure {
    /** Of the order by chance, all mornings and tanks thrown together. */
    AUC("AUC", 1, (answered, one) -> new Auc(answered.said(), answered.beyond(), answered.chapters(one))),
    /** Of the order by exposure, likewise. */
    AUC_OF_EXPOSURE("AUC by exposure", 1,
            (answered, one) -> new Auc(answered.exposure(), answered.beyond(), answered.chapters(one))),
    /** Of the chances against always saying the base rate. */
    SKILL("Brier skill", 1, (answered, one) -> Brier.skill(answered)),
    WORST_OF_SIX("worst of 6", 6, FirstPlaces::worstFirst),
    NDCG_OF_SIX("NDCG@3 of 6", 6, FirstPlaces::ndcg),
    WORST_OF_THIRTY("worst of 30", 30, FirstPlaces::worstFirst),
    NDCG_OF_THIRTY("NDCG@3 of 30", 30, FirstPlaces::ndcg);

    private final String title;
    private final int chapter;
    private final BiFunction<Answered, Integer, Resampled> score;

    Measure(String title, int chapter, BiFunction<Answered, Integer, Resampled> score) {
        this.title = title;
        this.chapter = chapter;
        this.score = score;
    }

    String title() {
        return title;
    }

    /** How many tanks are ordered at a time, and drawn at a time when resampling. */
    int chapter() {
        return chapter;
    }

    Resampled of(Answered answered) {
        return score.apply(answered, chapter);
    }
}
