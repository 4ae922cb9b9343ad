package midplate.batch;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import midplate.wire.Exchange;

/**
 * Answers lines of requests in their order: one thread reads, three work, the calling one writes. Three, so that two
 * cores are busy while one waits for the answer to a question that another works on. The queue between them is
 * bounded, so memory stays small however long the input is; each answer is written and flushed as soon as it is its turn.
 */
public final class Batch {
    private static final int WORKERS = 3;
    private static final int WAITING = 64;

    private final Exchange exchange;
    private final PrintWriter errors;

    /** Answers with this exchange; what goes wrong inside the program is told to {@code errors}. */
    public Batch(Exchange exchange, PrintWriter errors) {
        this.exchange = exchange;
        this.errors = errors;
    }

    /** The end of the input, or the failure that ended it. */
    private record Turn(Future<String> answer, Kind kind) {
        enum Kind {
            ANSWER,
            END,
            FAILED
        }

        static Turn last(Kind kind) {
            return new Turn(CompletableFuture.completedFuture(""), kind);
        }
    }

    /** Answers until the input ends; the result is the exit status: 0, or 1 when input or output failed. */
    public int run(InputStream in, OutputStream out) {
        BlockingQueue<Turn> turns = new ArrayBlockingQueue<>(WAITING);
        ExecutorService workers = Executors.newFixedThreadPool(WORKERS, Batch::daemon);
        Thread reader = daemon(() -> read(in, workers, turns));
        reader.start();
        try {
            return write(turns, new BufferedOutputStream(out));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return 1;
        } finally {
            reader.interrupt();
            workers.shutdownNow();
        }
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "midplate-batch");
        thread.setDaemon(true);
        return thread;
    }

    private void read(InputStream in, ExecutorService workers, BlockingQueue<Turn> turns) {
        try {
            Lines lines = new Lines(in, Exchange.MOST_BYTES);
            Turn.Kind end = Turn.Kind.END;
            try {
                for (Optional<Lines.Line> line = lines.next(); line.isPresent(); line = lines.next()) {
                    Lines.Line one = line.get();
                    turns.put(new Turn(workers.submit(() -> answer(one)), Turn.Kind.ANSWER));
                }
            } catch (IOException e) {
                tell("Standard input failed: " + e.getMessage());
                end = Turn.Kind.FAILED;
            }
            turns.put(Turn.last(end));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt(); // the writer has ended
        }
    }

    private String answer(Lines.Line line) {
        return line.tooLong() ? exchange.tooLongLine() : exchange.line(line.bytes(), this::tellSlip);
    }

    private int write(BlockingQueue<Turn> turns, OutputStream out) throws InterruptedException {
        while (true) {
            Turn turn = turns.take();
            if (turn.kind() != Turn.Kind.ANSWER) {
                return turn.kind() == Turn.Kind.END ? 0 : 1;
            }
            try {
                out.write((turn.answer().get() + "\n").getBytes(StandardCharsets.UTF_8));
                out.flush();
            } catch (IOException e) {
                tell("Standard output failed: " + e.getMessage());
                return 1;
            } catch (ExecutionException e) {
                tellSlip(e);
                return 1;
            }
        }
    }

    private void tell(String what) {
        errors.println(what);
        errors.flush();
    }

    private synchronized void tellSlip(Throwable slip) {
        slip.printStackTrace(errors);
        errors.flush();
    }
}
