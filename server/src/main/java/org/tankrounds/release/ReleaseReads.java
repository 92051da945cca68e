package org.tankrounds.release;

import org.tankrounds.season.FishSampleRepository;
import org.tankrounds.season.SeasonReads;

/** What the pages of releases read together. */
public record ReleaseReads(SiteRepository sites, ApprovalRepository approvals, RulesRepository rules,
        PlanRepository plans, DayRepository days,
        StreamCheckRepository checks, SeasonReads season, FishSampleRepository samples) {}
