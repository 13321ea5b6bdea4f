package longpoint.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What every package says is said in every language, and nothing is said that nobody asks for. */
class BundlesTest {
  private static final Path RESOURCES = Path.of("src/main/resources/longpoint");
  private static final Path SOURCES = Path.of("src/main/java/longpoint");
  private static final Pattern PLACE = Pattern.compile("\\{(\\d+)}");

  /** UTF-8 read as Latin-1, and the sign that stands for a byte nobody could read. */
  private static final Pattern MOJIBAKE = Pattern.compile("[ÃÂ][\\u0080-\\u00bf]|â€|\\ufffd");

  /** Packages whose keys are put together from the names of tasks, fields, tools and walls. */
  private static final Set<String> BUILT_UP = Set.of("desktop", "editor");

  @TestFactory
  Stream<DynamicTest> everyPackageIsTranslated() {
    List<String> packages = packages();
    assertThat(packages).contains("desktop", "editor", "plan");
    return packages.stream().map(p -> DynamicTest.dynamicTest(p, () -> translated(p)));
  }

  private static void translated(String name) {
    Map<String, String> english = bundle(name, "Messages.properties");
    Map<String, String> french = bundle(name, "Messages_fr.properties");
    assertThat(french.keySet()).isEqualTo(english.keySet());
    english.forEach(
        (key, text) -> {
          assertThat(places(french.get(key))).as(key).isEqualTo(places(text));
          assertThat(french.get(key).isBlank()).as(key).isEqualTo(text.isBlank());
        });
  }

  /** French typography: Lexique des règles typographiques (Imprimerie nationale), from memory. */
  @TestFactory
  Stream<DynamicTest> everyTranslationIsWellSet() {
    return packages().stream().map(p -> DynamicTest.dynamicTest(p, () -> wellSet(p)));
  }

  private static void wellSet(String name) {
    bundle(name, "Messages.properties")
        .forEach((key, text) -> assertThat(MOJIBAKE.matcher(text).find()).as(key).isFalse());
    bundle(name, "Messages_fr.properties")
        .forEach(
            (key, text) -> {
              assertThat(MOJIBAKE.matcher(text).find()).as(key).isFalse();
              assertThat(text).as(key).doesNotContain("“", "”").doesNotContainPattern("\\pL'\\pL");
              assertThat(text).as(key).doesNotContain("''");
              assertThat(text).as(key).doesNotContainPattern("\\pL[?!;:](\\s|$)");
              assertThat(text).as(key).doesNotContainPattern("«\\S|\\S»");
            });
  }

  /** A key is twice in one file only by mistake, and the first would never be seen. */
  @TestFactory
  Stream<DynamicTest> noKeyStandsTwice() {
    return packages().stream()
        .flatMap(p -> Stream.of(p + "/Messages.properties", p + "/Messages_fr.properties"))
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file,
                    () -> {
                      Map<String, Integer> times = new HashMap<>();
                      for (String line : read(RESOURCES.resolve(file)).split("\n")) {
                        if (!line.isBlank() && !line.startsWith("#")) {
                          times.merge(line.substring(0, line.indexOf('=')), 1, Integer::sum);
                        }
                      }
                      assertThat(times).allSatisfy((key, n) -> assertThat(n).as(key).isEqualTo(1));
                    }));
  }

  /**
   * A key is written whole, by its last part, or by what stands before that where a choice ends it;
   * {@code .cure} goes with its message.
   */
  @Test
  void nothingIsSaidThatNobodyAsksFor() {
    for (String name : packages()) {
      if (!BUILT_UP.contains(name)) {
        Set<String> asked = asked(SOURCES);
        for (String key : bundle(name, "Messages.properties").keySet()) {
          String stem = key.replaceFirst("\\.cure$", "");
          assertThat(asked)
              .as(name + "." + key)
              .containsAnyOf(
                  name + "." + key,
                  name + "." + stem,
                  name + "." + stem.substring(0, stem.lastIndexOf('.') + 1),
                  stem.substring(0, Math.max(0, stem.lastIndexOf('.'))),
                  stem.substring(0, stem.lastIndexOf('.') + 1),
                  stem,
                  stem.substring(stem.lastIndexOf('.') + 1));
        }
      }
    }
  }

  /** What an error or a warning says has its cure under the same key; a note may have none. */
  @Test
  void everyProblemHasItsCure() {
    Pattern worse =
        Pattern.compile("Problem\\.(?:error|warning)\\([^;]*?\"([a-z]+)\\.([a-zA-Z.]*[a-zA-Z])\"");
    List<MatchResult> all = worse.matcher(sources(SOURCES)).results().toList();
    assertThat(all).hasSizeGreaterThan(30);
    for (MatchResult m : all) {
      assertThat(bundle(m.group(1), "Messages.properties")).containsKey(m.group(2) + ".cure");
    }
    Map<String, String> checks = bundle("plan", "Messages.properties");
    checks.forEach(
        (key, text) -> {
          if (text.endsWith(".") && !key.endsWith(".cure")) {
            assertThat(checks).containsKey(key + ".cure");
          }
        });
  }

  /** Every phrase the sources name is there. */
  @Test
  void everythingAskedForIsThere() {
    Set<String> packages = Set.copyOf(packages());
    Pattern phrase = Pattern.compile("Phrase\\.of\\(\\s*\"([a-z]+)\\.([a-zA-Z.]*[a-zA-Z])\"");
    List<MatchResult> all = phrase.matcher(sources(SOURCES)).results().toList();
    assertThat(all).hasSizeGreaterThan(20);
    for (MatchResult m : all) {
      assertThat(packages).contains(m.group(1));
      assertThat(bundle(m.group(1), "Messages.properties")).containsKey(m.group(2));
    }
  }

  /** Words between quotes, in sources. */
  private static Set<String> asked(Path folder) {
    return Pattern.compile("\"([a-zA-Z_.0-9-]+)\"")
        .matcher(sources(folder))
        .results()
        .map(m -> m.group(1))
        .collect(Collectors.toSet());
  }

  private static Set<String> places(String text) {
    return PLACE
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<String> packages() {
    try (Stream<Path> files = Files.walk(RESOURCES)) {
      return files
          .filter(f -> f.getFileName().toString().equals("Messages.properties"))
          .map(f -> f.getParent().getFileName().toString())
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, String> bundle(String name, String file) {
    Properties read = new Properties();
    try (var in = Files.newBufferedReader(RESOURCES.resolve(name).resolve(file))) {
      read.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, String> texts = new TreeMap<>();
    read.forEach((k, v) -> texts.put((String) k, (String) v));
    return texts;
  }

  private static String sources(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(f -> f.toString().endsWith(".java"))
          .sorted()
          .map(BundlesTest::read)
          .collect(Collectors.joining("\n"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
