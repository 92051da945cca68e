package org.tankrounds;

import static org.tankrounds.web.Role.COORDINATOR;
import static org.tankrounds.web.Role.SIGNED_IN;

import io.javalin.config.RoutesConfig;
import java.time.Clock;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.release.ApprovalHandlers;
import org.tankrounds.release.ApprovalRepository;
import org.tankrounds.release.DayHandlers;
import org.tankrounds.release.DayRepository;
import org.tankrounds.release.PlanHandlers;
import org.tankrounds.release.PlanPageHandlers;
import org.tankrounds.release.PlanRepository;
import org.tankrounds.release.ReleaseHandlers;
import org.tankrounds.release.ReleaseReads;
import org.tankrounds.release.RulesHandlers;
import org.tankrounds.release.RulesRepository;
import org.tankrounds.release.SiteHandlers;
import org.tankrounds.release.SiteRepository;
import org.tankrounds.release.StreamCheckHandlers;
import org.tankrounds.release.StreamCheckRepository;
import org.tankrounds.season.FishSampleRepository;
import org.tankrounds.web.Pages;

/** The pages of sites, approvals, releases and stream checks, with their URLs. */
record ReleaseRoutes(ReleaseHandlers overview, SiteHandlers sites, ApprovalHandlers approvals, RulesHandlers rules,
        PlanHandlers plans, PlanPageHandlers planPages, DayHandlers days,
        StreamCheckHandlers checks) {

    static ReleaseRoutes of(Transactions transactions, DirtyTanks dirtyTanks, AfterChange afterChange, Pages pages,
            Clock clock) {
        ReleaseReads reads = new ReleaseReads(new SiteRepository(), new ApprovalRepository(), new RulesRepository(),
                new PlanRepository(), new DayRepository(), new StreamCheckRepository(), SeasonPages.seasonReads(),
                new FishSampleRepository());
        return new ReleaseRoutes(
                new ReleaseHandlers(transactions, reads, pages, clock),
                new SiteHandlers(transactions, reads, pages),
                new ApprovalHandlers(transactions, reads, pages, clock),
                new RulesHandlers(transactions, reads.rules(), pages),
                new PlanHandlers(transactions, reads, pages, clock),
                new PlanPageHandlers(transactions, reads, pages, clock),
                new DayHandlers(transactions, reads, dirtyTanks, afterChange, pages, clock),
                new StreamCheckHandlers(transactions, reads, pages, clock));
    }

    void add(RoutesConfig routes) {
        routes.get("/release", overview::show, SIGNED_IN);
        routes.get("/release/rules", rules::show, COORDINATOR);
        routes.post("/release/rules", rules::update, COORDINATOR);
        routes.get("/release/sites/new", sites::showNew, COORDINATOR);
        routes.post("/release/sites", sites::create, COORDINATOR);
        routes.get("/release/sites/{site}", overview::showSite, SIGNED_IN);
        routes.get("/release/sites/{site}/edit", sites::showEdit, COORDINATOR);
        routes.post("/release/sites/{site}", sites::update, COORDINATOR);
        routes.get("/release/sites/{site}/approvals/new", approvals::showNew, COORDINATOR);
        routes.post("/release/sites/{site}/approvals", approvals::create, COORDINATOR);
        routes.get("/release/sites/{site}/approvals/{approval}", approvals::showEdit, COORDINATOR);
        routes.post("/release/sites/{site}/approvals/{approval}", approvals::update, COORDINATOR);
        routes.post("/release/sites/{site}/approvals/{approval}/withdrawn", approvals::withdraw, COORDINATOR);
        routes.get("/release/sites/{site}/checks/new", checks::showNew, SIGNED_IN);
        routes.post("/release/sites/{site}/checks/new", checks::create, SIGNED_IN);
        routes.get("/release/sites/{site}/checks/{streamCheck}", checks::show, SIGNED_IN);
        routes.post("/release/sites/{site}/checks/{streamCheck}/withdrawn", checks::withdraw, COORDINATOR);
        routes.get("/release/plans/new", plans::showNew, COORDINATOR);
        routes.post("/release/plans", plans::create, COORDINATOR);
        routes.get("/release/plans/{plan}", planPages::show, SIGNED_IN);
        routes.post("/release/plans/{plan}/checks", planPages::check, SIGNED_IN);
        routes.get("/release/plans/{plan}/tanks/{tank}", days::show, SIGNED_IN);
        routes.post("/release/plans/{plan}/tanks/{tank}", days::create, SIGNED_IN);
        routes.get("/release/plans/{plan}/edit", plans::showEdit, COORDINATOR);
        routes.post("/release/plans/{plan}", plans::update, COORDINATOR);
        routes.post("/release/plans/{plan}/dropped", plans::drop, COORDINATOR);
    }
}
