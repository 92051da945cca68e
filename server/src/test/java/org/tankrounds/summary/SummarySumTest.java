package org.tankrounds.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.config.CommandException;

/** Several chapters' summaries in one file. */
class SummarySumTest {
    private static final String HEADER =
            "chapter_code,chapter,season_code,season,level,school_code,school,classroom,tank,"
            + "eggs_received,dead_as_eggs,dead_as_sac_fry,dead_feeding,dead,alive_by_count,unexplained,survival,"
            + "moved_in,moved_out,taken_out_early,released";

    /** Wilson 1927: 148 of 200 survived is 0.675093 to 0.795862 (reference values of the project's science). */
    @Test
    void summaries_addUp_andEveryRowStays() {
        SummarySum sum = new SummarySum();
        sum.add("a.csv", summary("north", "2025-26", "t1", 120, 30, 0, 90));
        sum.add("b.csv", summary("south", "2025-26", "t2", 80, 20, 2, 58));
        List<NamedCsvRecord> rows = rows(sum.write());
        assertThat(rows).hasSize(7);
        NamedCsvRecord all = rows.get(6);
        assertThat(all.getField("level")).isEqualTo("all");
        assertThat(all.getField("eggs_received")).isEqualTo("200");
        assertThat(all.getField("released")).isEqualTo("148");
        assertThat(all.getField("unexplained")).isEqualTo("2");
        assertThat(all.getField("survival")).isEqualTo("0.74");
        assertThat(sum.words()).isEqualTo("2 summaries, 2 tanks, 200 eggs received, 148 released, 2 unexplained");
        assertThat(rows.get(0).getField("chapter")).isEqualTo("Chapter north");
    }

    @ParameterizedTest
    @CsvSource({"north, t2, 'Chapter north, season 2025-26, stands in a.csv and in b.csv'",
        "south, t1, 'tank t1 in season 2025-26, stands in a.csv and in b.csv'"})
    void noEgg_isCountedTwice(String chapter, String tank, String sentence) {
        SummarySum sum = new SummarySum();
        sum.add("a.csv", summary("north", "2025-26", "t1", 120, 30, 0, 90));
        assertThatThrownBy(() -> sum.add("b.csv", summary(chapter, "2025-26", tank, 80, 20, 2, 58)))
                .isInstanceOf(CommandException.class).hasMessageContaining("Eggs would count twice")
                .hasMessageContaining(sentence);
    }

    @Test
    void anotherSeasonOfAChapter_isNotTheSameEggs() {
        SummarySum sum = new SummarySum();
        sum.add("a.csv", summary("north", "2025-26", "t1", 120, 30, 0, 90));
        sum.add("b.csv", summary("north", "2024-25", "t1", 80, 20, 2, 58));
        assertThat(rows(sum.write())).hasSize(7);
    }

    @Test
    void whatWasChangedByHand_orIsNoSummary_isRefused() {
        assertRefused(summary("north", "2025-26", "t1", 120, 31, 0, 90),
                "does not balance, 120 came and 121 are told of");
        String changed = new String(summary("north", "2025-26", "t1", 120, 30, 0, 90), StandardCharsets.UTF_8)
                .replaceFirst("(?m)^(.*,chapter,.*,)120(,.*)$", "$1130$2");
        assertRefused(changed.getBytes(StandardCharsets.UTF_8),
                "\"eggs_received\" is 120 in its tanks and 130 in its chapter");
        assertRefused(summary("north", "2025-26", "t1", 120, -30, 0, 150),
                "\"dead\" of tank t1 is \"-30\"; a whole number from 0 to 10000000 is accepted");
        assertRefused(summary("north", "2025-26", "t1", 2_000_000_000, 0, 0, 2_000_000_000),
                "a whole number from 0 to 10000000 is accepted");
        assertRefused("a,b\n1,2\n".getBytes(StandardCharsets.UTF_8), "it has no column \"chapter_code\"");
        assertRefused(new byte[0], "is no season summary as CSV: it has no rows");
        assertRefused("chapter_code;chapter;tank\n1;2;3\n".getBytes(StandardCharsets.UTF_8),
                "commas stand between its columns");
    }

    /** Columns from behind the school's code: received, dead by stage and together, alive, unexplained, and moves. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "tank         | 120,0,0,30,30,5,0,,5,0,0,90 | \"alive_by_count\" is 5 in its tanks and 0 in its chapter",
        "tank/school  | 120,0,0,30,30,5,0,,5,0,0,90 | \"alive_by_count\" is 5 in its tanks and 0 in its chapter",
        "school       | 120,0,0,30,30,0,0,,0,0,5,90 | \"taken_out_early\" is 0 in tanks of school s and 5 there",
        "chapter      | 120,0,0,29,30,0,0,,0,0,0,90 | \"dead_feeding\" is 30 in its tanks and 29 in its chapter",
        "tank/school/chapter | 120,0,0,30,30,5,0,,5,0,0,90 | \"moved_in\" is 5 over its tanks and \"moved_out\" is 0",
        "tank/school/chapter | 120,0,0,30,30,0,0,,0,5,0,85 | \"moved_in\" is 0 over its tanks and \"moved_out\" is 5",
        "school       | many,0,0,30,30,0,0,,0,0,0,90 | \"eggs_received\" of school s is \"many\"",
    })
    void fishFromNowhere_areRefused(String levels, String counts, String sentence) {
        String made = new String(summary("north", "2025-26", "t1", 120, 30, 0, 90), StandardCharsets.UTF_8);
        String changed = made.replaceAll("(?m),(" + levels.replace('/', '|') + ")(,.*,)120,0,0,30,30,0,0,,0,0,0,90$",
                ",$1$2" + counts);
        assertThat(changed).isNotEqualTo(made);
        assertRefused(changed.getBytes(StandardCharsets.UTF_8), sentence);
    }

    @Test
    void movesFromTankToTank_balanceInTheirChapter() {
        SummarySum sum = new SummarySum();
        sum.add("a.csv", twoTanks("5", "5"));
        assertThat(rows(sum.write()).get(4).getField("moved_in")).isEqualTo("5");
    }

    /** An older file lacks a column, or a file that was combined before has it empty: it is not told. */
    @Test
    void aColumnThatOneLacks_isNotCompared() {
        SummarySum sum = new SummarySum();
        String made = new String(summary("north", "2025-26", "t1", 120, 30, 0, 90), StandardCharsets.UTF_8);
        sum.add("a.csv", made.replaceAll("\r\n(north.*)(?=\r\n)", "\r\n$1,").replaceFirst("released", "released,visits")
                .getBytes(StandardCharsets.UTF_8));
        sum.add("b.csv", summary("south", "2025-26", "t2", 80, 20, 2, 58));
        assertThat(rows(sum.write()).get(6).getField("visits")).isEmpty();
    }

    @Test
    void aRowThatIsThereTwice_andAFileThatIsGivenTwice_areCalledSo() {
        String made = new String(summary("north", "2025-26", "t1", 120, 30, 0, 90), StandardCharsets.UTF_8);
        assertRefused(made.replaceFirst("(?m)^(north.*,tank,.*\r\n)", "$1$1").getBytes(StandardCharsets.UTF_8),
                "Eggs would count twice: tank t1 in season 2025-26, stands twice in x.csv.");
        SummarySum sum = new SummarySum();
        sum.add("a.csv", made.getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(() -> sum.add("a.csv", made.getBytes(StandardCharsets.UTF_8)))
                .hasMessageContaining("Eggs would count twice: a.csv is given twice.");
    }

    /** A spreadsheet puts one there. */
    @Test
    void aByteOrderMark_isNoFault() {
        SummarySum sum = new SummarySum();
        byte[] csv = summary("north", "2025-26", "t1", 120, 30, 0, 90);
        sum.add("a.csv", ("\ufeff" + new String(csv, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8));
        assertThat(sum.words()).contains("120 eggs received");
    }

    private static void assertRefused(byte[] csv, String sentence) {
        SummarySum sum = new SummarySum();
        assertThatThrownBy(() -> sum.add("x.csv", csv)).isInstanceOf(CommandException.class)
                .hasMessageContaining(sentence).hasMessageContaining("x.csv");
    }

    private static byte[] summary(String chapter, String season, String tank, int eggs, int dead, int unexplained,
            int released) {
        String names = chapter + ",Chapter " + chapter + "," + season.hashCode() + "," + season + ",";
        String counts = "," + eggs + ",0,0," + dead + "," + dead + ",0," + unexplained + ",,0,0,0," + released;
        return (HEADER + "\r\n" + names + "tank,s,School,Room," + tank + counts + "\r\n"
                + names + "school,s,School,," + counts + "\r\n"
                + names + "chapter,,,," + counts + "\r\n").getBytes(StandardCharsets.UTF_8);
    }

    /** 120 eggs came to the first, and from it fish to the second. */
    private static byte[] twoTanks(String out, String in) {
        String names = "north,Chapter north,1,2025-26,";
        return (HEADER + "\r\n" + names + "tank,s,School,Room,t1,120,0,0,0,0,115,0,,0," + out + ",0,0\r\n"
                + names + "tank,s,School,Room,t2,0,0,0,0,0,5,0,," + in + ",0,0,0\r\n"
                + names + "school,s,School,,,120,0,0,0,0,120,0,," + in + "," + out + ",0,0\r\n"
                + names + "chapter,,,,,120,0,0,0,0,120,0,," + in + "," + out + ",0,0\r\n")
                .getBytes(StandardCharsets.UTF_8);
    }

    private static List<NamedCsvRecord> rows(byte[] csv) {
        return CsvReader.builder().ofNamedCsvRecord(new String(csv, StandardCharsets.UTF_8)).stream().toList();
    }
}
