package org.tankrounds.words;

import java.util.Set;

/** What is read by scripts and operators, in English whoever they are. */
final class EnglishForGood {
    /** Whole packages. */
    private static final Set<String> PACKAGES = Set.of("backup", "check", "config", "db", "demo", "jobs", "lab");

    /**
     * Answers to scripts, and files that commands read and write; the names of units that forecasts and summaries
     * carry for them.
     */
    private static final Set<String> FILES = Set.of(
            "forecast/Circumstances.java", "forecast/Fans.java", "forecast/Reasons.java", "people/Doorman.java",
            "people/OperatorTokens.java",
            "readings/BatchApi.java", "readings/BatchLine.java", "readings/BatchTransaction.java",
            "readings/IdempotencyKey.java", "readings/JsonText.java", "readings/ReadingApi.java",
            "readings/ReadingParser.java", "readings/ReadingQuery.java", "readings/RequestBody.java",
            "readings/SenmlAnswer.java", "readings/SenmlApi.java", "readings/SenmlMeaning.java",
            "readings/SenmlPack.java", "readings/StoreBatch.java", "readings/Times.java",
            "rounds/CsvRow.java", "rounds/CsvTable.java", "rounds/RankCommand.java", "rounds/RankingCsv.java",
            "rounds/ReadingsCsv.java", "rounds/RoundsQuery.java", "rounds/TanksCsv.java",
            "summary/DataPackage.java", "summary/FormulaResults.java", "summary/PackageTable.java",
            "summary/Series.java", "summary/SheetTable.java",
            "summary/SummaryHandlers.java", "summary/SummarySum.java", "summary/SummaryWorkbook.java",
            "summary/WatersideColumns.java", "summary/Wqx.java", "water/Analyte.java",
            "web/Parameters.java", "web/OfflineHandlers.java");

    /**
     * Words that nobody reads: they keep what is hashed for one purpose apart from another, name a font, ask the
     * database in parts, or are what loggers write.
     */
    private static final Set<String> NO_SENTENCES = Set.of("people/CardCode.java", "people/FormToken.java",
            "readings/DeviceDays.java", "readings/DeviceValues.java", "readings/ObservationRepository.java",
            "readings/files/WrittenNumber.java", "web/Paper.java");

    private EnglishForGood() {}

    /** Commands stand beside the packages. */
    static boolean covers(String file) {
        return !file.contains("/") || PACKAGES.contains(file.substring(0, file.indexOf('/')))
                || FILES.contains(file) || NO_SENTENCES.contains(file);
    }
}
