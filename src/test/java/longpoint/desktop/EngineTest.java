package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import longpoint.stop.CalledOff;
import org.junit.jupiter.api.Test;

/** Needs no window, only the event thread. */
class EngineTest {
  private final BlockingQueue<String> begun = new LinkedBlockingQueue<>();
  private final BlockingQueue<String> told = new LinkedBlockingQueue<>();
  private final List<Throwable> broken = new CopyOnWriteArrayList<>();

  /** Work that never ends by itself when it is asked for {@code endless}. */
  private String work(String request) {
    begun.add(request);
    while (request.startsWith("endless")) {
      CalledOff.check();
      Thread.onSpinWait();
    }
    return request;
  }

  private Engine<String, String> engine() {
    return new Engine<>(
        this::work, a -> told.add("answer " + a), broken::add, q -> told.add("off " + q));
  }

  private static String next(BlockingQueue<String> queue) throws InterruptedException {
    return queue.poll(20, TimeUnit.SECONDS);
  }

  @Test
  void whatIsWorkedOnIsCalledOffAndTheNextIsNotHit() throws Exception {
    try (Engine<String, String> engine = engine()) {
      engine.ask("endless");
      assertThat(next(begun)).isEqualTo("endless");
      engine.ask("quick");
      engine.callOff(q -> q.equals("quick")); // only waits
      engine.callOff(q -> q.equals("endless"));
      assertThat(next(told)).isEqualTo("off endless");
      assertThat(next(told)).isEqualTo("answer quick");
      engine.callOff(q -> true); // nothing is worked on
      engine.ask("again");
      assertThat(next(told)).isEqualTo("answer again");
      assertThat(broken).isEmpty();
    }
  }

  @Test
  void whatWaitsIsCalledOffToo() throws Exception {
    try (Engine<String, String> engine = engine()) {
      engine.ask("endless");
      assertThat(next(begun)).isEqualTo("endless");
      engine.ask("endless too");
      engine.callOff();
      assertThat(next(told)).isEqualTo("off endless");
      engine.ask("quick");
      assertThat(next(told)).isEqualTo("answer quick");
      Supplier<String> begins = () -> begun.poll();
      assertThat(begins.get()).isEqualTo("quick");
    }
  }

  /** Closing the window ends whatever goes on. */
  @Test
  void closingEndsTheWork() throws Exception {
    Engine<String, String> engine = engine();
    engine.ask("endless");
    assertThat(next(begun)).isEqualTo("endless");
    engine.close();
    assertThat(next(told)).isEqualTo("off endless");
  }
}
