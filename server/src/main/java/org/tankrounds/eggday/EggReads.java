package org.tankrounds.eggday;

import org.tankrounds.season.SeasonReads;

/** What the pages of egg day read together. */
public record EggReads(
        EggRunRepository runs, CoolerRepository checks, ReceiptRepository receipts, SeasonReads season) {}
