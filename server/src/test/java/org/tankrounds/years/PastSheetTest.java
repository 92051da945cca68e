package org.tankrounds.years;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.season.DeathCause;
import org.tankrounds.season.Ledger;

/** What is understood of a sheet that somebody kept before. */
class PastSheetTest {

    @Test
    void cellsOfASpreadsheet_comeWithTabs_sumsAndWordsOfTheirOwn() {
        PastSheet sheet = PastSheet.read("""
                School\tRoom\tEggs\tDead eggs\tDead fish\tReleased\tMoon
                Thistle School\tRoom 4\t1,200\t150\t200\t800\tfull
                Harebell School\tLab\t200\t20\t\t150\t

                Total\t\t1,400\t170\t200\t950\t
                """);
        assertThat(sheet.faults()).isEmpty();
        assertThat(sheet.total()).isEqualTo(new Ledger(1400, 0, 170, 0, 200, 0, 0, 950, 0, 80));
        assertThat(sheet.sums()).containsExactly(5);
        assertThat(sheet.uncounted()).containsExactly("Moon");
        assertThat(sheet.counted()).extracting(PastSheet.Counted::place)
                .containsExactly("Thistle School, Room 4", "Harebell School, Lab");
    }

    @Test
    void deadWithoutAStage_standBesideThoseWithOne() {
        PastSheet sheet = PastSheet.read("escuela;huevos;huevos muertos;muertos;liberados\nColegio Uno;100;10;30;60");
        assertThat(sheet.faults()).isEmpty();
        assertThat(sheet.total().deadAsEggs()).isEqualTo(10);
        assertThat(sheet.deadUnstaged()).isEqualTo(20);
        assertThat(sheet.total().unexplained() - sheet.deadUnstaged()).isEqualTo(10);
    }

    @Test
    void causesOfTheSummarysOwnFile_areCounted() {
        PastSheet sheet = PastSheet.read("level,school,eggs_received,dead_of_chlorine\ntank,A,100,7\nschool,A,100,7");
        assertThat(sheet.causes().of(DeathCause.CHLORINE)).isEqualTo(7);
        assertThat(sheet.sums()).containsExactly(3);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            school,moon~A,3                          | years.sheet.noEggs
            eggs~3                                   | years.sheet.noSchool
            school,eggs,huevos~A,3,3                 | years.sheet.twice
            school,eggs~A,many                       | years.sheet.notACount
            school,eggs~A,-3                         | years.sheet.notACount
            school,eggs~,3                           | years.sheet.whichSchool
            school,eggs,dead,dead eggs~A,9,2,5       | years.sheet.deadLess
            school,eggs,released,unexplained~A,9,5,1 | years.sheet.unbalanced
            school,eggs                              | years.sheet.noLines
            school,eggs~Total,3                      | years.sheet.noTanks
            """)
    void whatCannotBeCounted_isSaid(String text, String key) {
        assertThat(PastSheet.read(text.replace('~', '\n')).faults()).extracting(fault -> fault.why().key())
                .contains(key);
    }

    @Test
    void everyCell_isKeptAsItWas() {
        PastSheet sheet = PastSheet.read("school,eggs,note\n\"A, B\",100,\"said \"\"fine\"\"\nand left\"\n");
        assertThat(sheet.lines())
                .containsExactly(new PastSheet.Line(2, List.of("A, B", "100", "said \"fine\"\nand left")));
        assertThat(PastSheet.of(sheet.header(), sheet.lines())).isEqualTo(sheet);
    }

    /** A browser cuts the last tabs off, and a note may stand beside the table. */
    @Test
    void linesOfAnotherLength_areReadAsFarAsTheyGo() {
        PastSheet sheet = PastSheet.read("school\teggs\treleased\nA\t100\nB\t50\t40\tlate\nSum\t150");
        assertThat(sheet.faults()).isEmpty();
        assertThat(sheet.total().received()).isEqualTo(150);
        assertThat(sheet.total().released()).isEqualTo(40);
        assertThat(sheet.lines().get(1).cells()).containsExactly("B", "50", "40", "late");
    }

    @Test
    void moreLinesThanAreTaken_areNotLeftOutInSilence() {
        String text = "school,eggs\n" + "A,1\n".repeat(2001);
        assertThat(PastSheet.read(text).faults()).extracting(fault -> fault.why().key())
                .containsExactly("years.sheet.long");
        assertThat(PastSheet.read("school,eggs\n" + "A,100000\n".repeat(2000)).total().received())
                .isEqualTo(200_000_000);
        assertThat(PastSheet.read("school,eggs\nA,10000000").faults()).isNotEmpty();
    }

    @Test
    void nothing_isSaidToBeNothing() {
        assertThat(PastSheet.read("").faults()).isNotEmpty();
        assertThat(PastSheet.read("\ufeffschool,eggs\nA,1").faults()).isEmpty();
    }
}
