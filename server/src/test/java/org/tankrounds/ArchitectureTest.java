package org.tankrounds;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which package may know which; the house stays as it was drawn. */
@AnalyzeClasses(packages = "org.tankrounds", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    /** In the order in which they may know each other: each those before it. */
    private static final List<String> PURE =
            List.of("water", "fish", "stream", "transport", "tankmodel", "belief", "forecast", "advice", "lab");
    private static final List<String> EDGES = List.of("web", "db", "jobs", "mail", "config");
    private static final List<String> FEATURES =
            List.of("people", "places", "readings", "behaviour", "tasks", "breaks", "rounds", "classroom", "visits",
                    "season", "calendar", "eggday", "release", "summary", "years", "messages");
    /** Math that gives the same bits on every machine; StrictMath has the rest. */
    private static final Set<String> EXACT_MATH =
            Set.of("abs", "min", "max", "sqrt", "rint", "round", "ceil", "floor", "floorDiv", "floorMod",
                    "signum", "addExact", "multiplyExact", "toIntExact", "clamp");

    /** A table belongs to one package. */
    private static final Map<String, String> OWNER_OF_TABLE = Map.ofEntries(
            Map.entry("Chapters", "people"), Map.entry("People", "people"),
            Map.entry("TankTeachers", "people"),
            Map.entry("Sessions", "people"), Map.entry("SignInThrottles", "people"),
            Map.entry("Invitations", "people"), Map.entry("SetupLinks", "people"),
            Map.entry("Tokens", "people"), Map.entry("ClassCards", "people"),
            Map.entry("Schools", "places"), Map.entry("Classrooms", "places"), Map.entry("Tanks", "places"),
            Map.entry("Kits", "places"), Map.entry("KitScales", "places"),
            Map.entry("Readings", "readings"), Map.entry("Measurements", "readings"),
            Map.entry("Submissions", "readings"), Map.entry("LoggerFiles", "readings"),
            Map.entry("TankForecasts", "rounds"), Map.entry("RoundsVersions", "rounds"),
            Map.entry("FishLooks", "behaviour"), Map.entry("Tasks", "tasks"),
            Map.entry("SchoolBreaks", "breaks"), Map.entry("BreakDays", "breaks"),
            Map.entry("Seasons", "season"), Map.entry("Lots", "season"), Map.entry("FishSamples", "season"),
            Map.entry("CountEntries", "season"), Map.entry("DeathCauses", "season"),
            Map.entry("ReleaseSites", "release"), Map.entry("ReleaseApprovals", "release"),
            Map.entry("ReleaseRules", "release"), Map.entry("ReleasePlans", "release"),
            Map.entry("ReleasePlanTanks", "release"), Map.entry("ReleasePlanChecks", "release"),
            Map.entry("ReleaseDays", "release"), Map.entry("StreamChecks", "release"),
            Map.entry("StreamCheckCounts", "release"),
            Map.entry("SummaryVersions", "summary"), Map.entry("SummaryFiles", "summary"),
            Map.entry("SummaryLinks", "summary"), Map.entry("PastSeasons", "years"), Map.entry("PastRows", "years"),
            Map.entry("EggRuns", "eggday"), Map.entry("EggStops", "eggday"), Map.entry("CoolerChecks", "eggday"),
            Map.entry("EggReceipts", "eggday"),
            Map.entry("Visits", "visits"), Map.entry("DirtyTanks", "jobs"));
    /**
     * Joins that spare a second query: a tank's code beside a token or a forecast, the teachers of a tank where it is
     * asked who may know of it, the name of who asked for something or wrote it down.
     */
    private static final Map<String, Set<String>> JOINED_BY =
            Map.of("Tanks", Set.of("people", "rounds"), "TankTeachers", Set.of("places"),
                    "People", Set.of("tasks", "season", "visits", "summary", "eggday", "release"));

    @ArchTest
    static void pureCore_knowsOnlyTheLanguageAndThePureBeforeIt(JavaClasses all) {
        for (int i = 0; i < PURE.size(); i++) {
            List<String> allowed = new ArrayList<>(List.of("java.lang..", "java.util..", "java.time.."));
            PURE.subList(0, i + 1).forEach(name -> allowed.add(packageOf(name)));
            classes().that().resideInAPackage(packageOf(PURE.get(i)))
                    .should().onlyDependOnClassesThat(resideInAnyPackage(allowed.toArray(String[]::new))
                            .or(nameMatching("\\[+[ZBCSIJFD]"))
                            .and(not(resideInAnyPackage("java.util.concurrent..", "java.util.logging..",
                                    "java.lang.reflect.."))))
                    .allowEmptyShould(PURE.get(i).equals("lab"))
                    .check(all);
        }
    }

    @ArchTest
    static final ArchRule pureCore_hasNoClockNoLuckAndNoMachine = noClasses().that(arePure())
            .should().callMethodWhere(DescribedPredicate.describe("it asks the machine",
                    ArchitectureTest::asksTheMachine))
            .orShould().callConstructorWhere(DescribedPredicate.describe("it draws a seed of its own",
                    call -> Set.of("java.util.Random", "java.util.SplittableRandom")
                            .contains(call.getTargetOwner().getName())
                            && call.getTarget().getRawParameterTypes().isEmpty()))
            .orShould().accessFieldWhere(DescribedPredicate.describe("it uses the console",
                    access -> access.getTargetOwner().isEquivalentTo(System.class)))
            .orShould().dependOnClassesThat().haveFullyQualifiedName("java.time.Clock")
            .orShould().dependOnClassesThat().haveFullyQualifiedName("java.util.UUID");

    @ArchTest
    static final ArchRule pureCore_computesTheSameBitsEverywhere = noClasses().that(arePure())
            .should().callMethodWhere(DescribedPredicate.describe("it is left to the machine's own Math",
                    call -> call.getTargetOwner().isEquivalentTo(Math.class)
                            && !EXACT_MATH.contains(call.getName())))
            .orShould().callMethodWhere(DescribedPredicate.describe("its order changes from run to run",
                    call -> Set.of("java.util.Set", "java.util.Map").contains(call.getTargetOwner().getName())
                            && Set.of("of", "ofEntries", "copyOf").contains(call.getName())
                            || Set.of("parallel", "parallelStream").contains(call.getName())));

    @ArchTest
    static final ArchRule edges_knowNoFeatureAndNoScience = noClasses().that(areIn(EDGES))
            .should().dependOnClassesThat(areIn(FEATURES).or(arePure())
                    .or(resideInAPackage(packageOf("demo"))));

    @ArchTest
    static final ArchRule features_doNotKnowTheDemo = noClasses().that(areIn(FEATURES))
            .should().dependOnClassesThat().resideInAPackage(packageOf("demo"));

    @ArchTest
    static final ArchRule composition_isKnownToNobody = noClasses().that()
            .resideInAnyPackage("org.tankrounds.*..")
            .should().dependOnClassesThat().resideInAPackage("org.tankrounds");

    @ArchTest
    static final ArchRule packages_doNotKnowEachOtherInCircles =
            slices().matching("org.tankrounds.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule tables_areTouchedByTheirOwnerOnly = classes()
            .that().resideOutsideOfPackages("org.tankrounds.db.schema..", packageOf("demo"))
            .should(new ArchCondition<JavaClass>("touch only tables of their own package") {
                @Override
                public void check(JavaClass user, ConditionEvents events) {
                    user.getDirectDependenciesFromSelf().stream()
                            .filter(use -> use.getTargetClass().getPackageName()
                                    .equals("org.tankrounds.db.schema.tables"))
                            .filter(use -> !mayTouch(topPackage(user), use.getTargetClass().getSimpleName()))
                            .forEach(use -> events.add(SimpleConditionEvent.violated(user,
                                    use.getDescription())));
                }
            });

    private static boolean asksTheMachine(JavaAccess<?> call) {
        String owner = call.getTargetOwner().getName();
        return call.getName().equals("now") && owner.startsWith("java.time.")
                || owner.equals("java.lang.System") && !call.getName().equals("arraycopy")
                || owner.equals("java.lang.Math") && call.getName().equals("random")
                || call.getName().equals("systemDefault")
                || owner.equals("java.lang.Thread") || owner.equals("java.lang.Runtime")
                || owner.equals("java.util.Locale") && call.getName().equals("getDefault");
    }

    private static boolean mayTouch(String user, String table) {
        return user.equals(OWNER_OF_TABLE.get(table))
                || JOINED_BY.getOrDefault(table, Set.of()).contains(user);
    }

    private static String topPackage(JavaClass user) {
        String inside = user.getPackageName().substring("org.tankrounds".length());
        return inside.isEmpty() ? "" : inside.substring(1).split("\\.")[0];
    }

    private static DescribedPredicate<JavaClass> arePure() {
        return areIn(PURE);
    }

    private static DescribedPredicate<JavaClass> areIn(List<String> names) {
        return resideInAnyPackage(names.stream().map(ArchitectureTest::packageOf).toArray(String[]::new));
    }

    private static String packageOf(String name) {
        return "org.tankrounds." + name + "..";
    }
}
