package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.tankrounds.config.CommandException;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestClock;
import org.tankrounds.testing.TestDatabase;

class OperatorTokensIT {
    private final TestDatabase database = TestDatabase.shared();
    private final Cast cast = Cast.add(database.transactions(), "Operator's Chapter");

    @Test
    void aToken_isIssuedListedAndRevoked() {
        String forTank = on(tokens -> tokens.issueForTank(cast.tankA().code(), null, "new probe"));
        String forChapter = on(tokens -> tokens.issueForChapter(cast.chapter().code(), "new logger"));

        Bearers bearers = new Bearers(database.transactions(), TestClock.atStart());
        assertThat(bearers.find(forTank).orElseThrow().tankId()).hasValue(cast.tankA().tankId());
        assertThat(bearers.find(forChapter).orElseThrow().tankId()).isEmpty();
        String line = on(OperatorTokens::list).stream().filter(l -> l.contains("new logger")
                && l.contains(cast.chapter().code())).findFirst().orElseThrow();
        assertThat(line).contains("all tanks").doesNotContain(forChapter);

        int id = Integer.parseInt(line.split(" ")[0]);
        on(tokens -> {
            tokens.revoke(id);
            return null;
        });

        assertThat(bearers.find(forChapter)).isEmpty();
        assertThatThrownBy(() -> on(tokens -> {
            tokens.revoke(id);
            return null;
        })).isInstanceOf(CommandException.class).hasMessageContaining("no token " + id);
    }

    @Test
    void whatDoesNotExist_isAClearSentence() {
        assertThatThrownBy(() -> on(tokens -> tokens.issueForTank("nosuch", null, "x")))
                .hasMessage("There is no tank with the code nosuch.");
        assertThatThrownBy(() -> on(tokens -> tokens.issueForChapter("nosuch", "x")))
                .hasMessage("There is no chapter with the code nosuch.");
    }

    private <T> T on(Function<OperatorTokens, T> work) {
        return OperatorTokens.on(database.logins(), TestClock.atStart(), work);
    }
}
