package longpoint.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longpoint.editor.tools.Tools;
import org.junit.jupiter.api.Test;

/** Every message asked for is there, in the language of the desktop. */
class MessagesTest {
  private static Properties read(String file) throws IOException {
    Properties words = new Properties();
    try (InputStream in = Messages.class.getResourceAsStream(file)) {
      words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    return words;
  }

  @Test
  void everyMessageAskedForByNameIsThere() throws IOException {
    Set<String> known = read("Messages.properties").stringPropertyNames();
    Pattern asked = Pattern.compile("Messages\\.text\\(\\s*\"([a-z.]*[a-z])\"");
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/longpoint/editor"))) {
      Set<String> keys =
          files
              .filter(f -> f.toString().endsWith(".java"))
              .flatMap(f -> asked.matcher(text(f)).results())
              .map(m -> m.group(1))
              .collect(Collectors.toSet());
      assertThat(keys).hasSizeGreaterThan(50);
      assertThat(known).containsAll(keys);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void theDesktopsLanguageIsSpoken() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.FRANCE);
      assertThat(Tools.RECTANGLE.label()).isEqualTo("Rectangle");
      assertThat(Tools.MOVE.label()).isEqualTo("Déplacer");
      assertThat(WallName.of(Houses.house(), Houses.house().parts().get(0), 2))
          .isEqualTo("le mur nord de Maison");
      Locale.setDefault(Locale.GERMANY);
      assertThat(Tools.MOVE.label()).isEqualTo("Move");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void everyToolHasALabelAndAHint() {
    for (Tools tool : Tools.values()) {
      assertThat(tool.label()).isNotBlank();
      assertThat(tool.hint()).endsWith(".");
    }
  }
}
