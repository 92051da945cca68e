package org.tankrounds.release;

import org.tankrounds.season.SeasonReads;

/** What the pages of releases read together. */
public record ReleaseReads(SiteRepository sites, ApprovalRepository approvals, RulesRepository rules,
        SeasonReads season) {}
