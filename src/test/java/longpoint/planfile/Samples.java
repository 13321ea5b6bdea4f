package longpoint.planfile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The plans that come with the program. */
final class Samples {
  private Samples() {}

  static List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(Path.of("sample-plans"))) {
      return all.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
  }
}
