package org.tankrounds.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.words.Words;

class ApprovalTest {
    private static final LocalDate EXPIRY = LocalDate.of(2026, 5, 20);

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2026-04-30, 'holds from 2026-05-01 to 2026-05-31'", "2026-05-01, ''", "2026-05-20, ''",
            "2026-05-21, 'ran out on 2026-05-20'", "2026-06-01, 'holds from 2026-05-01 to 2026-05-31'"})
    void approval_holdsOnItsDays_whileItsPaperDoes(LocalDate day, String why) {
        Approval approval = approval(Species.RAINBOW_TROUT, Optional.of(EXPIRY), Optional.empty());
        assertThat(approval.holdsOn(day)).isEqualTo(why.isEmpty());
        assertThat(said(approval, day)).contains(why);
    }

    @Test
    void approval_ofAnotherFishOrTakenBack_holdsOnNoDay() {
        LocalDate day = LocalDate.of(2026, 5, 10);
        assertThat(said(approval(Species.BROOK_TROUT, Optional.empty(), Optional.empty()), day))
                .isEqualTo("Approval P-8 is for brook trout, not for rainbow trout.");
        assertThat(said(approval(Species.RAINBOW_TROUT, Optional.empty(), Optional.of(Instant.EPOCH)), day))
                .contains("was taken back");
    }

    @Test
    void approval_hasRoomForWhatIsNeitherReleasedNorPlanned() {
        Approval approval = approval(Species.RAINBOW_TROUT, Optional.empty(), Optional.empty());
        Approval.Used used = new Approval.Used(250, 100);
        assertThat(approval.left(used)).isEqualTo(50);
        assertThat(approval.refusal(50, used)).isEmpty();
        assertThat(approval.refusal(51, used).map(Words.english()::say)).contains("Approval P-8 allows 400 fish."
                + " Released under it: 250; in other plans: 100; free: 50. This would be 51.");
        assertThat(used.released() + used.planned() + approval.left(used)).isEqualTo(400);
        assertThat(approval.left(new Approval.Used(500, 0))).isEqualTo(-100);
    }

    /** Two adults even for one child: one stays while the other goes for help. */
    @Test
    void adults_areAsManyAsTheRuleAsks() {
        Rules rules = new Rules(4, 20, Optional.empty());
        assertThat(rules.adultsFor(1)).isEqualTo(2);
        assertThat(rules.adultsFor(8)).isEqualTo(2);
        assertThat(rules.adultsFor(9)).isEqualTo(3);
    }

    private static String said(Approval approval, LocalDate day) {
        return approval.refusal(day, LocalDate::toString).map(Words.english()::say).orElse("");
    }

    private static Approval approval(Species species, Optional<LocalDate> expiry, Optional<Instant> withdrawn) {
        return new Approval(1, 1, new Approval.Details("P-8", "State fish agency", species, LocalDate.of(2026, 5, 1),
                LocalDate.of(2026, 5, 31), 400, expiry, Optional.empty()), withdrawn);
    }
}
