package org.tankrounds.lab.evaluation;

/**
 * What was said to a question.
 *
 * @param chance from 0 to 1; of a plain reference any number that orders
 * @param exposure fish-hours, by which chapters are ranked; of a plain reference its number again
 */
public record Answer(double chance, double exposure) {

    /** Of somebody who only tells which tank is worse. */
    static Answer ofOrder(double score) {
        return new Answer(score, score);
    }
}
