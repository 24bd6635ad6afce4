package io.github.tapwright.desktop.listening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.comparison.listening.ListenBlind;
import io.github.tapwright.desktop.NotesDesk;
import io.github.tapwright.desktop.sound.PlaybackModel;
import io.github.tapwright.desktop.work.DirectWork;
import io.github.tapwright.desktop.work.HeldWork;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.level.broadcast.LoudnessMatch;
import io.github.tapwright.level.broadcast.MatchedBy;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.sitting.SetSittingAside;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.listening.ListeningSession;
import io.github.tapwright.sitting.listening.ListeningTrial;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The listening's model without a toolkit and without sound, on a real archive and real recordings. */
class ListeningModelTest {

    @TempDir
    static Path kept;

    private static Sitting run;

    @TempDir
    Path folder;

    private final Notices notices = new Notices(failure -> {
        throw new AssertionError(failure);
    });
    private NotesDesk desk;
    private ListeningModel model;

    /** Analysed once; every test has a copy of its own. */
    @BeforeAll
    static void record() throws IOException {
        try (NotesDesk first = NotesDesk.in(kept)) {
            run = first.addRun();
        }
    }

    @BeforeEach
    void fill() throws IOException {
        desk = NotesDesk.copyOf(kept, folder);
        model = model();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private ListeningModel model() {
        return model(new DirectWork(notices));
    }

    private ListeningModel model(Work work) {
        PlaybackModel playback = new PlaybackModel(desk.output(), work, notices, Runnable::run);
        playback.acceptCaution();
        return new ListeningModel(
                new ListeningModel.UseCases(
                        desk.listSittings(),
                        desk.showSitting(),
                        new ListenBlind(desk.archive.listenings(), desk.cutStretch(), NotesDesk.CLOCK)),
                playback,
                work,
                notices,
                () -> 4711L,
                ZoneOffset.UTC);
    }

    @Test
    void aSittingSetAsideSinceItWasListedIsRefusedWithItsReason() {
        model.choice().refresh();
        new SetSittingAside(desk.archive.sittings(), NotesDesk.CLOCK).setAside(run.id(), "a neighbour's guitar");
        model.choice().offer(run.id());
        assertThat(model.choice().offered()).isEmpty();
        assertThat(notices.latest().get().orElseThrow().words()).contains("is set aside (a neighbour's guitar)");
    }

    private void begin(int trials) {
        model.choice().offer(run.id());
        model.choice().choose(model.choice().offered().get(0));
        model.choice().choose(model.choice().offered().get(2));
        model.trialCount().set(trials);
        model.begin();
    }

    private ListeningSession session() {
        return model.session().get().orElseThrow();
    }

    /** Listens to all three and answers as an ear would that compares what it heard, or against it. */
    private void answer(boolean rightly) {
        desk.played.clear();
        Arrays.stream(Letter.values()).forEach(model::play);
        double[] a = desk.played.get(0).sound().channel(0);
        double[] x = desk.played.get(2).sound().channel(0);
        model.answer(Arrays.equals(a, x) == rightly);
    }

    @Test
    void soundsAreEquallyLongAndEquallyLoudAndOnlyTurnedDown() {
        begin(10);
        Arrays.stream(Letter.values()).forEach(model::play);

        assertThat(session().setUp().matchedBy()).isEqualTo(MatchedBy.MOMENTARY_MAXIMUM);
        assertThat(session().setUp().sounds()).allMatch(s -> s.gainDb() <= 0).anyMatch(s -> s.gainDb() == 0);
        assertThat(desk.played)
                .extracting(p -> p.sound().length())
                .containsOnly(desk.played.get(0).sound().length());
        List<Double> heard =
                desk.played.stream().map(ListeningModelTest::loudness).toList();
        // matched from the same samples, so only rounding is left
        assertThat(heard.get(1)).isCloseTo(heard.get(0), within(1e-6));
        assertThat(desk.played).allMatch(p -> p.gainDb() <= PlaybackModel.FIRST_LEVEL_DB);
    }

    private static double loudness(NotesDesk.Played played) {
        double[] samples = played.sound().channel(0);
        double gain = Math.pow(10, played.gainDb() / 20);
        return LoudnessMatch.lufs(
                        Recording.of(
                                played.sound().sampleRate(),
                                Arrays.stream(samples).map(s -> gain * s).toArray()),
                        MatchedBy.MOMENTARY_MAXIMUM)
                .orElseThrow();
    }

    @Test
    void noAnswerBeforeAllThreeWereHeard() {
        begin(10);
        model.play(Letter.A);
        model.play(Letter.X);
        assertThat(model.canAnswer()).isFalse();
        model.answer(true);
        assertThat(session().answers()).isEmpty();
        model.play(Letter.B);
        model.play(Letter.X);
        assertThat(model.canAnswer()).isTrue();
        model.answer(true);
        assertThat(session().answers())
                .singleElement()
                .satisfies(a -> assertThat(a.playCount()).isEqualTo(4));
        assertThat(model.heard().get())
                .as("the next question begins with silence")
                .isEmpty();
    }

    @Test
    void anEarThatHearsTheDifferenceProvesIt() {
        begin(16);
        for (int i = 0; i < 16; i++) {
            assertThat(model.result()).as("no word before the end").isEmpty();
            assertThat(model.matching()).isEmpty();
            answer(i >= 3);
        }
        assertThat(session().rightCount()).isEqualTo(13);
        // P(X ≥ 13 | 16) = (560 + 120 + 16 + 1)/65536 = 1.06 %, counted outcomes
        assertThat(model.result().get(0))
                .startsWith("Told apart: 13 of 16 answers are right. Guessing alone brings 13 or more right in 1.1 %")
                .contains("12 were needed for 5 % or less");
        assertThat(model.limits())
                .anyMatch(w -> w.contains("one listener"))
                .anyMatch(w -> w.contains("not which is better"));
        assertThat(model.matching()).hasSize(2);
    }

    @Test
    void halfTheAnswersRightMeansCannotTellAndNotAlike() {
        begin(10);
        for (int i = 0; i < 10; i++) {
            answer(i % 2 == 0);
        }
        // P(X ≥ 5 | 10) = 638/1024 = 62.3 %; P(X ≥ 9 | 10, ¾) = (10·3⁹ + 3¹⁰)/4¹⁰ = 24.4 %, worked by hand
        assertThat(model.result().get(0)).startsWith("Cannot tell: 5 of 10").contains("in 62 %");
        assertThat(model.result().get(1))
                .contains("does not prove that the sounds are alike")
                .contains("in 24 %");
    }

    @Test
    void answersOutliveTheProgramAndTheListeningGoesOnWithTheSameQuestions() {
        begin(10);
        answer(true);
        answer(false);
        ListeningSession before = session();
        ListeningTrial next = ListenBlind.next(before).orElseThrow();
        desk.close(); // as after a kill: nothing else was told to the model

        desk = NotesDesk.in(folder);
        model = model();
        model.refresh();
        assertThat(model.sessions()).containsExactly(before);
        model.open(model.sessions().get(0));

        assertThat(model.standing()).startsWith("Question 3 of 10");
        assertThat(ListenBlind.next(session())).contains(next);
        answer(true);
        assertThat(session().answers()).hasSize(3);
        assertThat(session().answers().subList(0, 2)).isEqualTo(before.answers());
    }

    @Test
    void oneSoundIsNotEnoughAndWhatIsLeftOutCanComeBack() {
        model.choice().offer(run.id());
        model.choice().choose(model.choice().offered().get(0));
        model.choice().choose(model.choice().offered().get(0));
        assertThat(model.choice().chosen()).hasSize(1);
        model.begin();
        assertThat(model.session().get()).isEmpty();
        assertThat(notices.latest().get().orElseThrow().words()).contains("two different sounds");

        model.choice().leaveOut(model.choice().chosen().get(0));
        assertThat(model.choice().chosen()).isEmpty();
        notices.undo();
        assertThat(model.choice().chosen())
                .containsExactly(model.choice().offered().get(0));
    }

    private HeldWork heldAtTheFirstQuestion() {
        HeldWork work = new HeldWork(notices);
        model = model(work);
        model.choice().offer(run.id());
        work.finish();
        model.choice().choose(model.choice().offered().get(0));
        model.choice().choose(model.choice().offered().get(2));
        model.trialCount().set(10);
        model.begin();
        work.finish();
        return work;
    }

    @Test
    void whoLeavesWhileAnAnswerIsKeptIsNotCalledBackAndTheAnswerStays() {
        HeldWork work = heldAtTheFirstQuestion();
        Arrays.stream(Letter.values()).forEach(letter -> {
            model.play(letter);
            work.finish();
        });
        model.answer(true);
        model.leave();
        work.finish();

        assertThat(model.session().get()).isEmpty();
        assertThat(model.sessions())
                .singleElement()
                .satisfies(s -> assertThat(s.answers()).hasSize(1));
    }

    @Test
    void aSoundOfTheQuestionBeforeIsNotHeardInTheNext() {
        HeldWork work = heldAtTheFirstQuestion();
        Arrays.stream(Letter.values()).forEach(letter -> {
            model.play(letter);
            work.finish();
        });
        model.answer(true);
        model.play(Letter.A);
        desk.played.clear();
        work.finish();

        assertThat(session().answers()).hasSize(1);
        assertThat(desk.played).isEmpty();
        assertThat(model.heard().get()).isEmpty();
    }

    @Test
    void whoOpensAListeningWhileSoundsAreMatchedKeepsIt() {
        begin(10);
        answer(true);
        ListeningSession before = session();
        HeldWork work = new HeldWork(notices);
        model = model(work);
        begin(() -> model.begin(), work);
        model.open(before);
        work.finish();

        assertThat(session()).isEqualTo(before);
        assertThat(desk.archive.listenings().all()).as("nobody waited for it").hasSize(1);
    }

    private void begin(Runnable begins, HeldWork work) {
        model.choice().offer(run.id());
        work.finish();
        model.choice().choose(model.choice().offered().get(0));
        model.choice().choose(model.choice().offered().get(1));
        begins.run();
    }

    @Test
    void whoBeginsTwiceInHasteHasOneListening() {
        HeldWork work = new HeldWork(notices);
        model = model(work);
        begin(
                () -> {
                    model.begin();
                    model.begin();
                },
                work);
        work.finish();

        assertThat(desk.archive.listenings().all()).hasSize(1);
        assertThat(session().finished()).isFalse();
    }

    @Test
    void leavingSaysThatItCanGoOn() {
        begin(10);
        answer(true);
        model.leave();
        assertThat(model.session().get()).isEmpty();
        assertThat(notices.latest().get().orElseThrow().words()).contains("not finished");
        assertThat(model.sessions()).hasSize(1);
    }
}
