package org.tankrounds;

import java.time.Clock;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.places.ClassroomHandlers;
import org.tankrounds.places.KitHandlers;
import org.tankrounds.places.PlaceReads;
import org.tankrounds.places.PlacesHandlers;
import org.tankrounds.places.SchoolHandlers;
import org.tankrounds.places.TankEdits;
import org.tankrounds.places.TankHandlers;
import org.tankrounds.web.Pages;

/** The pages of schools, rooms, tanks and kits. */
record PlacePages(
        PlacesHandlers overview, SchoolHandlers schools, ClassroomHandlers rooms, TankHandlers tanks,
        KitHandlers kits) {

    static PlacePages of(Transactions transactions, PlaceReads reads, DirtyTanks dirtyTanks, AfterChange afterChange,
            Pages pages, Clock clock) {
        return new PlacePages(
                new PlacesHandlers(transactions, reads, pages),
                new SchoolHandlers(transactions, reads, dirtyTanks, afterChange, pages, clock),
                new ClassroomHandlers(transactions, reads, dirtyTanks, afterChange, pages, clock),
                new TankHandlers(transactions, reads, new TankEdits(dirtyTanks), afterChange, pages, clock),
                new KitHandlers(transactions, reads, pages));
    }
}
