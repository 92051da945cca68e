package org.tankrounds.classroom;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.advice.Act;
import org.tankrounds.behaviour.Look;
import org.tankrounds.behaviour.SeenLately;
import org.tankrounds.breaks.BreakWatch;
import org.tankrounds.breaks.BreakWording;
import org.tankrounds.fish.Development;
import org.tankrounds.pages.ClassPage;
import org.tankrounds.pages.ClassPage.Done;
import org.tankrounds.pages.ClassPage.Feed;
import org.tankrounds.pages.ClassPage.Todo;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.TankPage;
import org.tankrounds.places.Kit;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.LogBoxes;
import org.tankrounds.readings.Wording;
import org.tankrounds.rounds.TankToday;
import org.tankrounds.rounds.TankToday.Advised;
import org.tankrounds.rounds.TankToday.Level;
import org.tankrounds.season.FishSample;
import org.tankrounds.tasks.Task;
import org.tankrounds.web.Formats;

/** From what is known of a tank to the page of its class. */
final class ClassPages {
    private static final Duration SILENT = Duration.ofDays(5);
    private static final double WHOLE = 100;

    /**
     * What one page is made of; looks, samples and tasks are the newest first, breaks those that are not over.
     *
     * @param seen what stands of the looks of late
     */
    record Known(TankToday today, Kit kit, List<Look> looks, SeenLately seen, List<FishSample> samples,
            List<Task> tasks, List<BreakWatch> breaks) {
        Tank tank() {
            return today.tank();
        }
    }

    private final Known known;
    private final Formats formats;
    private final boolean mayAsk;
    private final LevelWording levels;
    private final StoryWording stories;
    private final Trouble trouble;

    /** @param mayAsk whether the reader may ask the class to do something */
    ClassPages(Known known, Formats formats, boolean mayAsk) {
        this.known = known;
        this.formats = formats;
        this.mayAsk = mayAsk;
        this.levels = new LevelWording(formats, known.today(), new LogBoxes(known.tank(), known.kit()));
        this.stories = new StoryWording(formats);
        this.trouble = new Trouble(known.today(), known.seen(), formats);
    }

    ClassPage page(String saved, FormField ask) {
        List<Level> newest = known.today().levels();
        Optional<Development> lot = known.today().development();
        String heading = heading(newest);
        return new ClassPage(formats.speech().titled(ask.wrong(), heading), heading,
                say("classroom.place", known.tank().school(), known.tank().classroom()), known.tank().code(), saved,
                trouble.facts(), newest.stream().map(levels::measured).toList(), todo(), done(),
                lot.map(this::feed).orElse(null), lot.map(eggs -> stories.warmth(known.today(), eggs)).orElse(null),
                stories.nitrogen(known.today().believedLevels(), levels),
                known.today().filter().map(stories::now).orElse(""),
                known.today().pictures(formats), fish(), away(), mayAsk, ask);
    }

    private String heading(List<Level> newest) {
        return trouble.heading().orElseGet(() -> measured(newest));
    }

    private String measured(List<Level> newest) {
        Optional<Level> beyond = Stream.concat(newest.stream(), known.today().believedLevels().stream())
                .filter(levels::isBeyondLately).findFirst();
        if (beyond.isPresent()) {
            return say("classroom.title.beyond", levels.name(beyond.get().analyte()));
        }
        if (known.today().needsCareToday()) {
            return say("classroom.title.care");
        }
        if (newest.stream().anyMatch(Level::setAside)) {
            return say("classroom.title.setAside");
        }
        Optional<Instant> last = known.today().lastLookAt();
        if (last.isEmpty()) {
            return say("classroom.title.never");
        }
        return last.get().isBefore(formats.now().minus(SILENT))
                ? say("classroom.title.silent", formats.since(last.get()))
                : trouble.unusual().orElseGet(() -> say("classroom.title.good"));
    }

    private Feed feed(Development lot) {
        FeedWording wording = new FeedWording(formats);
        return trouble.isGrave() && !known.today().stage().isBeforeFirstFeeding() ? wording.noneInTrouble()
                : wording.feed(known.today(), FishSize.of(known.today(), lot, known.samples()));
    }

    private List<Todo> todo() {
        List<Todo> todo = new ArrayList<>(trouble.todo().stream().toList());
        known.tasks().stream().filter(Task::isOpen).forEach(task -> todo.add(asked(task)));
        known.today().advice(formats).stream().filter(this::isNotJustDone)
                .forEach(advised -> todo.add(advised(advised)));
        return todo;
    }

    private Todo asked(Task task) {
        String to = here() + "/tasks/" + task.taskId();
        return new Todo(task.words(), "", "", say("classroom.todo.asked",
                task.askedBy().orElse(""), formats.moment(task.askedAt())), to + "/done", "", "",
                mayAsk ? to + "/dropped" : "");
    }

    private boolean isNotJustDone(Advised advised) {
        Instant lately = formats.now().minus(Task.SAME_DEED);
        return known.tasks().stream().noneMatch(task -> task.act().equals(Optional.of(code(advised.kind())))
                && task.doneAt().filter(lately::isBefore).isPresent());
    }

    /** What a reading tells is not ticked: the reading is the record, and the forecast counts it. */
    private Todo advised(Advised advised) {
        TankPage.Advice words = advised.words();
        return switch (advised.kind()) {
            case ASK_FOR_READING -> new Todo(measure(advised), words.how(), words.caution(), "", "", here() + "/log",
                    say("classroom.todo.putIn"), "");
            case WATER_CHANGE -> new Todo(words.act(), words.how(), words.caution(), "", "", here() + "/log"
                    + (advised.amount().isPresent() && advised.amount().getAsDouble() <= WHOLE
                            ? "?water_change=" + Math.round(advised.amount().getAsDouble()) : ""),
                    say("classroom.todo.changed"), "");
            default -> new Todo(words.act(), words.how(), words.caution(), "",
                    here() + "/advice/" + code(advised.kind()) + "/done", "", "", "");
        };
    }

    /** The tank page has it for whoever asks the class; here the class is told. */
    private String measure(Advised advised) {
        return say("classroom.todo.measure", advised.asks().map(Wording::inSentence).orElseThrow());
    }

    private List<Done> done() {
        return known.tasks().stream().filter(task -> !task.isOpen()).map(task -> new Done(task.words(),
                formats.moment(task.doneAt().orElseThrow()), here() + "/tasks/" + task.taskId() + "/undone")).toList();
    }

    private String fish() {
        List<Look> standing = known.seen().looks();
        Stream<String> seen = (standing.isEmpty() ? known.looks().stream().limit(1) : standing.stream())
                .map(trouble::seen);
        return Stream.concat(seen, Stream.of(trouble.dead())).filter(one -> !one.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private String away() {
        return known.breaks().stream().findFirst().map(new BreakWording(formats)::line).orElse("");
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }

    private String here() {
        return "/tanks/" + known.tank().code();
    }

    /** How an act is called in addresses and in the database. */
    static String code(Act.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }
}
