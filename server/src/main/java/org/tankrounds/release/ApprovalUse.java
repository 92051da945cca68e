package org.tankrounds.release;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jooq.DSLContext;

/** What is used up of approvals and of tanks by what was released and by plans that are still to be carried out. */
final class ApprovalUse {
    private final Map<String, Integer> released;
    private final Map<Integer, String> numbers;
    private final List<ReleasePlan> plans;
    private final Set<Carried> carried;

    /** Fish of a tank that a plan took, and that are out by now. */
    private record Carried(int planId, int tankId) {}

    private ApprovalUse(Map<String, Integer> released, Map<Integer, String> numbers, List<ReleasePlan> plans,
            Set<Carried> carried) {
        this.released = released;
        this.numbers = numbers;
        this.plans = plans;
        this.carried = carried;
    }

    /** @param since plans before it are over, and take nothing any more */
    static ApprovalUse read(ReleaseReads reads, DSLContext tx, int chapterId, Instant since) {
        Map<Integer, String> numbers = reads.approvals().list(tx, chapterId).stream()
                .collect(Collectors.toMap(Approval::approvalId, one -> key(one.number())));
        List<ReleasePlan> ahead = reads.plans().list(tx, chapterId).stream()
                .filter(plan -> plan.droppedAt().isEmpty() && !plan.details().startsAt().isBefore(since)).toList();
        Set<UUID> standing = reads.season().counts().releasedByForm(tx, chapterId).keySet();
        Set<Carried> carried = reads.days().list(tx, chapterId).stream()
                .filter(day -> standing.contains(day.submission()))
                .map(day -> new Carried(day.planId(), day.tankId())).collect(Collectors.toSet());
        return new ApprovalUse(reads.season().counts().releasedByApproval(tx, chapterId), numbers, ahead, carried);
    }

    /** @param exceptPlan one whose fish are not counted among the planned; 0 for none */
    Approval.Used of(Approval approval, int exceptPlan) {
        String number = key(approval.number());
        return new Approval.Used(released.getOrDefault(number, 0),
                planned(exceptPlan, plan -> numbers.get(plan.approvalId()).equals(number), load -> true));
    }

    /** Fish of a tank that other plans take. */
    int plannedOf(int tankId, int exceptPlan) {
        return planned(exceptPlan, plan -> true, load -> load.tankId() == tankId);
    }

    /** Tanks whose fish are out by a plan already. */
    Set<Integer> outBy(int planId) {
        return carried.stream().filter(one -> one.planId() == planId).map(Carried::tankId).collect(Collectors.toSet());
    }

    /** Whether all that a plan takes is out. */
    boolean isOut(ReleasePlan plan) {
        return plan.details().loads().stream()
                .allMatch(load -> carried.contains(new Carried(plan.planId(), load.tankId())));
    }

    private int planned(int exceptPlan, Predicate<ReleasePlan> which, Predicate<Load> whose) {
        return plans.stream().filter(plan -> plan.planId() != exceptPlan && which.test(plan))
                .flatMap(plan -> plan.details().loads().stream()
                        .filter(load -> !carried.contains(new Carried(plan.planId(), load.tankId()))))
                .filter(whose)
                .mapToInt(Load::fish).sum();
    }

    private static String key(String number) {
        return number.toLowerCase(Locale.ROOT);
    }
}
