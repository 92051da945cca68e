package org.tankrounds;

import java.time.Clock;
import org.tankrounds.behaviour.LookRepository;
import org.tankrounds.breaks.BreakHandlers;
import org.tankrounds.breaks.BreakRepository;
import org.tankrounds.breaks.BreakWatches;
import org.tankrounds.classroom.ClassDesk;
import org.tankrounds.classroom.ClassHandlers;
import org.tankrounds.classroom.FishHandlers;
import org.tankrounds.classroom.WhatToDoHandlers;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.jobs.TankChange;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.TankRepository;
import org.tankrounds.rounds.TanksToday;
import org.tankrounds.season.FishSampleRepository;
import org.tankrounds.tasks.TaskRepository;
import org.tankrounds.visits.VisitHandlers;
import org.tankrounds.visits.VisitRepository;
import org.tankrounds.web.Pages;

/**
 * The pages of a class: its tank in plain words, its fish, who looks in during breaks, what hangs on the wall, and who
 * came to see it.
 */
record ClassroomPages(ClassHandlers classes, FishHandlers fish, BreakHandlers breaks, WhatToDoHandlers whatToDo,
        VisitHandlers visits) {

    static ClassroomPages of(Transactions transactions, TankRepository tanks, TanksToday today, KitRepository kits,
            LookRepository looks, TaskRepository tasks, BreakRepository breaks, BreakWatches watches,
            DirtyTanks dirtyTanks, AfterChange afterChange, Pages pages, Clock clock) {
        FishSampleRepository samples = new FishSampleRepository();
        TankChange tankChange = new TankChange(transactions, dirtyTanks, afterChange, clock);
        ClassDesk desk = new ClassDesk(transactions, today, kits, looks, samples, tasks, watches, pages, clock);
        return new ClassroomPages(
                new ClassHandlers(transactions, tasks, desk),
                new FishHandlers(transactions, looks, samples, tankChange, desk),
                new BreakHandlers(transactions, tanks, breaks, watches, tankChange, pages, clock),
                new WhatToDoHandlers(transactions, today, pages, clock),
                new VisitHandlers(transactions, tanks, new VisitRepository(), pages, clock));
    }
}
