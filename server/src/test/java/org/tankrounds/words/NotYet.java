package org.tankrounds.words;

import java.util.Set;

/** Files whose sentences are not in messages yet. A file that is done leaves its list; none may join. */
final class NotYet {
    static final Set<String> TEMPLATES = Set.of(
            "fragments/picture.html",
            "form-page.html", "help.html", "people/class-card.html", "people/door-card-paper.html",
            "people/door-card.html", "people/invitation.html", "people/people.html", "people/person.html",
            "people/set-up.html", "people/tokens.html", "places/kits.html", "places/overview.html",
            "rounds/board.html", "rounds/car.html", "rounds/morning.html", "season/season.html",
            "summary/paper.html", "summary/summary.html", "tanks/mine.html", "tanks/tank.html");

    static final Set<String> CODE = Set.of(
            "behaviour/LookWording.java", "rounds/SeenWording.java", "forecast/Circumstances.java", "forecast/Fans.java", "forecast/Reasons.java",
            "pages/InvitationPage.java", "pages/KitsPage.java", "pages/SetUpPage.java",
            "people/CardHandlers.java", "people/DoorCards.java", "people/Invitations.java",
            "people/PersonActs.java", "people/PersonForm.java", "people/PersonHandlers.java",
            "people/PersonPages.java", "people/SetUp.java", "people/SetUpHandlers.java",
            "people/TokenHandlers.java", "people/TokenPages.java", "places/CardNames.java",
            "places/ClassroomHandlers.java", "places/GenericKit.java", "places/KitForm.java",
            "places/KitHandlers.java", "places/PlacesPageMaker.java", "places/SchoolForm.java",
            "places/SchoolHandlers.java", "places/TankForm.java", "places/TankHandlers.java",
            "rounds/ActWording.java", "rounds/AftermathWording.java", "rounds/Analytes.java",
            "rounds/AskWording.java", "rounds/BoardHeading.java", "rounds/BringList.java",
            "rounds/CareWording.java", "rounds/CauseWording.java", "rounds/EffectWording.java",
            "rounds/FishHolding.java", "rounds/HelpHandlers.java", "rounds/Levels.java",
            "rounds/LifeWording.java", "rounds/LimitWording.java", "rounds/Morning.java",
            "rounds/MorningPages.java", "rounds/MorningScore.java", "rounds/NarrowWording.java",
            "rounds/ReasonWording.java", "rounds/RoundsPages.java", "rounds/SeasonEvents.java",
            "rounds/SeasonNumbers.java", "rounds/SeasonPictures.java", "rounds/SilenceWording.java",
            "rounds/Sparkline.java", "rounds/SpreadWording.java", "rounds/TankHandlers.java",
            "rounds/TankHeading.java", "rounds/TankHolding.java", "rounds/TankLog.java",
            "rounds/TankPages.java", "rounds/TankSeason.java", "rounds/Tier.java",
            "rounds/WaterHolding.java", "rounds/WaysPictures.java", "season/LotForm.java",
            "season/LotHandlers.java", "season/SeasonForm.java", "season/SeasonHandlers.java",
            "season/SeasonPageMaker.java", "summary/Series.java", "summary/SummaryHandlers.java",
            "summary/SummaryNotes.java", "summary/SummaryPageMaker.java", "summary/SummaryWorkbook.java",
            "water/Analyte.java");

    static final Set<String> SCRIPTS = Set.of(
            "board.js", "explore.js");

    private NotYet() {}
}
