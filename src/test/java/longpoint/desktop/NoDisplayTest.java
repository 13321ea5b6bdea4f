package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Without a screen the window says so in one sentence, and nothing else happens. */
class NoDisplayTest {
  /** Runs in a program of its own, since a toolkit once started stays. */
  public static final class Child {
    private Child() {}

    public static void main(String[] args) {
      try {
        DesktopApp.open(Optional.empty(), (design, request, folder, written) -> List.of());
        System.out.println("opened");
      } catch (NoDisplayException e) {
        System.out.println(e.getMessage());
        System.exit(2);
      }
    }
  }

  @Test
  void aDisplayThatIsNotThere() throws Exception {
    assertThat(run(":987")).isEqualTo("2: " + Texts.of("app.noDisplay"));
  }

  @Test
  void noDisplayAtAll() throws Exception {
    assertThat(run(null)).isEqualTo("2: " + Texts.of("app.noDisplay"));
  }

  private static String run(String display) throws Exception {
    ProcessBuilder child =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Duser.language=en",
            "-Dfile.encoding=UTF-8",
            "-Dstdout.encoding=UTF-8",
            "-cp",
            System.getProperty("java.class.path"),
            Child.class.getName());
    child.environment().remove("DISPLAY");
    if (display != null) {
      child.environment().put("DISPLAY", display);
    }
    child.redirectErrorStream(true);
    Process process = child.start();
    String said =
        new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
    return process.waitFor() + ": " + said;
  }
}
