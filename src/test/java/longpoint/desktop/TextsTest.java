package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import longpoint.drawing.Layer;
import longpoint.framing.stick.RafterKind;
import longpoint.framing.truss.TrussKind;
import longpoint.plan.Deck;
import longpoint.plan.EdgeKind;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.sheets.Layers;
import longpoint.surface.LineKind;
import org.junit.jupiter.api.Test;

/** Every word the window asks for is there, in both languages. */
class TextsTest {
  private static final Path SOURCES = Path.of("src", "main", "java", "longpoint", "desktop");
  private static final Pattern ASKED = Pattern.compile("Texts\\.of\\(\\s*\"([^\"]+)\"\\s*[,)]");
  private static final Pattern TASK =
      Pattern.compile("(?:Task\\.of|kind|parts|state)\\(\\s*\"([a-zA-Z.]+)\"");
  private static final Pattern FIELD =
      Pattern.compile("(?:form\\.(?:<[^>]*>)?(?:entry|choice|says)|length)\\(\\s*\"([^\"]+)\"");

  @Test
  void everyTextTheSourcesNameIsThere() {
    Set<String> wanted = new TreeSet<>();
    String sources = sources();
    find(ASKED, sources).forEach(wanted::add);
    for (String task : find(TASK, sources)) {
      wanted.add("task." + task);
      wanted.add("task." + task + ".tip");
    }
    for (String field : find(FIELD, sources)) {
      wanted.add("field." + field);
      wanted.add("field." + field + ".tip");
    }
    for (EdgeKind kind : EdgeKind.values()) {
      wanted.add("kind." + kind.key());
    }
    for (LineKind kind : LineKind.values()) {
      wanted.add("line." + kind.key());
      wanted.add("lines." + kind.key());
    }
    for (Frame.Method method : Frame.Method.values()) {
      wanted.add("framing." + method.key());
    }
    for (TrussKind kind : TrussKind.values()) {
      wanted.add("truss." + kind.name().toLowerCase(Locale.ROOT));
    }
    for (RafterKind kind : RafterKind.values()) {
      wanted.add("rafter." + kind.name().toLowerCase(Locale.ROOT));
    }
    for (Layer layer : Layers.ofPlanView()) {
      wanted.add("layer." + layer.name());
    }
    for (Deck.Start start : Deck.Start.values()) {
      wanted.add("deckStart." + start.key());
    }
    for (Join.Method method : Join.Method.values()) {
      wanted.add("join." + method.key());
    }
    for (Join.MadeFor madeFor : Join.MadeFor.values()) {
      wanted.add("madeFor." + madeFor.key());
    }
    assertThat(wanted).hasSizeGreaterThan(100);
    assertThat(bundle("Messages.properties").keySet()).containsAll(wanted);
  }

  @Test
  void aFrenchDesktopReadsFrench() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.CANADA_FRENCH);
      assertThat(Texts.of("menu.file")).isEqualTo("Fichier");
      Locale.setDefault(Locale.JAPAN);
      assertThat(Texts.of("menu.file")).isEqualTo("File");
    } finally {
      Locale.setDefault(before);
    }
  }

  private static Set<String> find(Pattern pattern, String text) {
    Set<String> found = new TreeSet<>();
    Matcher m = pattern.matcher(text);
    while (m.find()) {
      found.add(m.groupCount() > 0 ? m.group(1) : m.group());
    }
    return found;
  }

  private static String sources() {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      StringBuilder all = new StringBuilder();
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
        all.append(Files.readString(file));
      }
      return all.toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, String> bundle(String name) {
    Path file = Path.of("src", "main", "resources", "longpoint", "desktop", name);
    Properties read = new Properties();
    try (var in = Files.newBufferedReader(file)) {
      read.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, String> texts = new TreeMap<>();
    read.forEach((k, v) -> texts.put((String) k, (String) v));
    return texts;
  }
}
