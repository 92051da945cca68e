package org.tankrounds.release;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.tankrounds.places.Tank;
import org.tankrounds.season.Account;
import org.tankrounds.season.CountBook;
import org.tankrounds.season.Season;
import org.tankrounds.web.Caller;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Role;

/** Reads a plan with all that it is held against, as far as the caller may know of it. */
final class PlanFacts {
    private final ReleaseReads reads;
    private final DSLContext tx;
    private final Caller caller;
    private final Instant now;

    PlanFacts(ReleaseReads reads, DSLContext tx, Caller caller, Instant now) {
        this.reads = reads;
        this.tx = tx;
        this.caller = caller;
        this.now = now;
    }

    /** Tanks that the caller may open. */
    Set<Integer> own() {
        return reads.season().tanks().list(tx, caller).stream().map(Tank::tankId).collect(Collectors.toSet());
    }

    /** A teacher knows of the plans that take fish of their tanks. */
    static boolean mayKnow(Caller caller, ReleasePlan plan, Set<Integer> own) {
        return caller.role() != Role.TEACHER
                || plan.details().loads().stream().anyMatch(load -> own.contains(load.tankId()));
    }

    ReleasePlan known(ReleasePlan plan) {
        if (!mayKnow(caller, plan, own())) {
            throw new NotFoundException("plan");
        }
        return plan;
    }

    ReleaseJudge.Facts of(ReleasePlan plan) {
        int chapterId = caller.chapterId();
        Approval approval = reads.approvals().list(tx, chapterId).stream()
                .filter(one -> one.approvalId() == plan.approvalId()).findFirst().orElseThrow();
        ApprovalUse use = ApprovalUse.read(
                reads, tx, chapterId, LocalDate.ofInstant(now, caller.zone()).atStartOfDay(caller.zone()).toInstant());
        List<TankStock> stocks = stocks(plan, use);
        return new ReleaseJudge.Facts(plan, approval, use.of(approval, plan.planId()),
                reads.rules().find(tx, chapterId), stocks, ammonia(stocks),
                reads.plans().answers(tx, chapterId, plan.planId()), days(plan));
    }

    private List<AmmoniaRead> ammonia(List<TankStock> stocks) {
        return stocks.stream().flatMap(stock -> AmmoniaRead.newest(stock.place(), reads.season().observations().list(
                tx, caller.chapterId(), stock.tank().tankId(), now.minus(AmmoniaRead.LATELY), now)).stream()).toList();
    }

    private List<ReleaseJudge.Done> days(ReleasePlan plan) {
        Map<UUID, Integer> released = reads.season().counts().releasedByForm(tx, caller.chapterId());
        return reads.days().list(tx, caller.chapterId()).stream()
                .filter(day -> day.planId() == plan.planId() && released.containsKey(day.submission()))
                .map(day -> new ReleaseJudge.Done(day, released.get(day.submission()))).toList();
    }

    Season season(ReleasePlan plan) {
        return reads.season().seasons().list(tx, caller.chapterId()).stream()
                .filter(one -> one.seasonId() == plan.seasonId()).findFirst().orElseThrow();
    }

    private List<TankStock> stocks(ReleasePlan plan, ApprovalUse use) {
        CountBook book = new CountBook(reads.season(), tx, caller.chapterId(), season(plan), now);
        return plan.details().loads().stream().map(load -> {
            Tank tank = reads.season().tanks().findById(tx, caller.chapterId(), load.tankId()).orElseThrow();
            Account account = book.account(tank);
            return new TankStock(tank, account.ledger().alive(), account.spread(),
                    use.plannedOf(tank.tankId(), plan.planId()), Optional.empty());
        }).toList();
    }
}
