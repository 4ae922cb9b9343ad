package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import midplate.inference.Knowledge;
import midplate.words.Message;
import midplate.words.Refusal;
import org.junit.jupiter.api.Test;

class KeptConsultationTest {
    private final AtomicInteger worked = new AtomicInteger();

    private final Consultation counting = new Consultation() {
        @Override
        public Advice advice() {
            throw new AssertionError("not asked");
        }

        @Override
        public List<Forecast> at(List<Double> percentStrong) {
            worked.incrementAndGet();
            return percentStrong.stream()
                    .map(percent -> new Forecast(percent, 0.5, List.of()))
                    .toList();
        }

        @Override
        public Curves curves() {
            throw new AssertionError("not asked");
        }

        @Override
        public ScoutingPlan scout(int jars) {
            throw new AssertionError("not asked");
        }

        @Override
        public Replacements others(OthersWish wish) {
            throw new AssertionError("not asked");
        }

        @Override
        public Knowledge knowledge() {
            throw new AssertionError("not asked");
        }
    };

    @Test
    void theSameSharesAreWorkedOutOnce() {
        KeptConsultation kept = new KeptConsultation(() -> counting);
        List<Forecast> first = kept.at(List.of(10.0, 20.0));
        assertSame(first, kept.at(List.of(10.0, 20.0)));
        assertEquals(1, worked.get());
        assertEquals(30.0, kept.at(List.of(30.0)).get(0).percentStrong());
        assertEquals(2, worked.get());
    }

    @Test
    void whatWasAnsweredIsNotLearnedAgain() {
        AtomicInteger opened = new AtomicInteger();
        KeptConsultation kept = new KeptConsultation(() -> {
            opened.incrementAndGet();
            return counting;
        });
        kept.check();
        kept.at(List.of(10.0));
        kept.whichIsWhich();
        assertEquals(3, opened.get());
        kept.check();
        kept.at(List.of(10.0));
        kept.whichIsWhich();
        assertEquals(3, opened.get());
    }

    @Test
    void aRefusalIsNotTakenForAnAnswer() {
        AtomicInteger tried = new AtomicInteger();
        KeptConsultation kept = new KeptConsultation(() -> {
            if (tried.incrementAndGet() == 1) {
                throw new Refusal(
                        "spots",
                        Message.of("advice.no-spots"),
                        "[]",
                        Message.of("allowed.spots-from-to", "least", 1, "most", 50),
                        Message.of("todo.name-one-spot"));
            }
            return counting;
        });
        assertThrows(Refusal.class, kept::check);
        kept.check();
        assertEquals(10.0, kept.at(List.of(10.0)).get(0).percentStrong());
    }
}
