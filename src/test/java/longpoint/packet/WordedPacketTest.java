package longpoint.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.drawing.Strokes;
import longpoint.export.HtmlWriter;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Note;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.sheets.Paper;
import longpoint.sheets.SheetSet;
import longpoint.wording.Language;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * Everything made of a plan is in one language: each word that is read stands in the texts of that
 * language, or is one of the user's own, or a mark. A word left in the code would be neither.
 */
@Execution(ExecutionMode.CONCURRENT)
class WordedPacketTest {
  private static final Path SAMPLES = Path.of("sample-plans");
  private static final Path RESOURCES = Path.of("src/main/resources/longpoint");

  private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");

  /** Marks of trusses, rafters, cuts and planes: capitals only. Units are the same everywhere. */
  private static final Pattern MARK = Pattern.compile("\\p{Lu}+|mm|deg");

  /** English words of the trade that no French text has. */
  private static final Pattern ENGLISH =
      Pattern.compile(
          "(?i)\\b(ridge|hip|valley|eave|rake|truss(es)?|rafters?|sheets?|deck|heel|tail|ladder"
              + "|lookouts?|girders?|gable|square|left|right|number|length|height|the|and|of|with"
              + "|from|cut|kind|span|slope|scale|no\\.)\\b");

  private static Map<String, Design> designs() throws Exception {
    Map<String, Design> designs = new TreeMap<>();
    try (Stream<Path> files = Files.list(SAMPLES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
        designs.put(file.getFileName().toString(), Pipeline.solve(PlanFile.read(file).plan()));
      }
    }
    return designs;
  }

  @TestFactory
  Stream<DynamicTest> everyWordIsOfTheLanguage() throws Exception {
    List<DynamicTest> tests = new ArrayList<>();
    for (Language language : Language.values()) {
      Set<String> known = vocabulary(language);
      designs()
          .forEach(
              (name, design) ->
                  tests.add(
                      DynamicTest.dynamicTest(
                          language.key() + " " + name,
                          () -> check(design.spoken(language), known))));
    }
    return tests.stream();
  }

  private static void check(Design design, Set<String> known) throws Exception {
    Set<String> own = own(design.plan());
    for (String line : lines(design)) {
      for (String word : words(line)) {
        boolean cutShort =
            line.endsWith(word + "…") && own.stream().anyMatch(o -> o.startsWith(word));
        assertThat(
                known.contains(word)
                    || own.contains(word)
                    || MARK.matcher(word).matches()
                    || cutShort)
            .as("the word \"%s\" in \"%s\"", word, line)
            .isTrue();
      }
      if (design.plan().language() == Language.FRENCH) {
        String without = line;
        for (String word : own) {
          without = without.replaceAll("\\b" + Pattern.quote(word) + "\\b", "");
        }
        assertThat(without).doesNotContainPattern(ENGLISH);
      }
    }
  }

  /** Lettering cut short may cost a name its end, never a caution or a caption. */
  @TestFactory
  Stream<DynamicTest> nothingTheProgramSaysIsCutShort() throws Exception {
    List<DynamicTest> tests = new ArrayList<>();
    for (Language language : Language.values()) {
      List<String> texts = texts(language);
      designs()
          .forEach(
              (name, design) ->
                  tests.add(
                      DynamicTest.dynamicTest(
                          language.key() + " " + name,
                          () -> checkWhole(design.spoken(language), texts))));
    }
    return tests.stream();
  }

  private static void checkWhole(Design design, List<String> texts) {
    for (Paper paper : List.of(Paper.LETTER, Paper.A4)) {
      for (Page page : Packet.pages(design, paper)) {
        List<String> lines = new ArrayList<>();
        lettering(page.marks(), lines);
        for (String line : lines) {
          assertThat(line).as("in a table of %s on %s", page.title(), paper).isNotEqualTo("…");
          if (line.endsWith("…") && line.length() > 6) {
            String kept = line.substring(0, line.length() - 1).replace('\u00a0', ' ');
            assertThat(texts)
                .as("%s on %s: %s", page.title(), paper, line)
                .noneMatch(t -> t.contains(kept));
          }
        }
      }
    }
  }

  /** Everything that is read: lettering on the sheets, the lists, the page for phones, the mail. */
  private static List<String> lines(Design design) throws Exception {
    SheetSet sheets = Packet.sheets(design, Paper.A3);
    List<String> lines = new ArrayList<>();
    for (Page page : sheets.pages()) {
      lines.add(page.title());
      lettering(page.marks(), lines);
    }
    lettering(
        longpoint.sheets.UnfoldedPlanes.of(
                design.plan(), design.surface(), design.deck(), design.chalk(), sheets.roofScale())
            .drawing()
            .marks(),
        lines);
    lines.addAll(FiguresText.of(design).lines().toList());
    ByteArrayOutputStream html = new ByteArrayOutputStream();
    HtmlWriter.write(PhoneFigures.of(design, sheets.pages()), html);
    lines.addAll(read(html.toString(StandardCharsets.UTF_8)));
    lines.add(MailText.subject(design));
    // Names of files are the same in every language.
    MailText.of(design, List.of()).lines().forEach(lines::add);
    for (Output output : Output.values()) {
      lines.add(FiguresText.words(design.plan()).choice("about", output));
    }
    return lines;
  }

  private static void lettering(List<Mark> marks, List<String> lines) {
    for (Strokes.Label label : Strokes.of(marks, 1).labels()) {
      if (label.mark() instanceof Mark.Text text) {
        lines.add(text.text());
      } else if (label.mark() instanceof Mark.Dimension dimension) {
        lines.add(dimension.text());
      }
    }
  }

  /** What is between tags, and in the attributes that are read out or shown. */
  private static List<String> read(String html) {
    String bare =
        html.replaceAll("(?s)<(style|script)>.*?</\\1>", "")
            .replaceAll(
                "(?:aria-label|data-(?:count|kept|lost|ask|back|back-face))=\"([^\"]*)\"", ">$1<")
            .replaceAll("<[^<>]*>", "\n");
    return bare.lines()
        .map(l -> l.replaceAll("&[a-z#0-9]+;", " ").strip())
        .filter(l -> !l.isEmpty() && !l.contains("=\""))
        .toList();
  }

  private static List<String> words(String line) {
    return WORD.matcher(line).results().map(m -> m.group()).toList();
  }

  /** Words the user wrote. */
  private static Set<String> own(Plan plan) {
    Stream<String> texts =
        Stream.of(
                Stream.of(plan.title(), plan.particulars().site(), plan.particulars().drawnBy()),
                Stream.of(plan.particulars().date()),
                plan.parts().stream().map(Part::name),
                plan.parts().stream().map(Part::id),
                plan.markup().notes().stream().map(Note::text))
            .flatMap(s -> s);
    return texts.flatMap(t -> words(t).stream()).collect(Collectors.toCollection(TreeSet::new));
  }

  /** Every word of the texts of a language, as written, with a capital and without. */
  private static Set<String> vocabulary(Language language) throws Exception {
    Set<String> known = new HashSet<>(Set.of("Longpoint", "glTF", "OBJ"));
    for (String text : texts(language)) {
      for (String word : words(text)) {
        known.add(word);
        known.add(word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
        known.add(word.substring(0, 1).toLowerCase(Locale.ROOT) + word.substring(1));
      }
    }
    return known;
  }

  /** All texts but those of the window. */
  private static List<String> texts(Language language) throws Exception {
    String file = language == Language.ENGLISH ? "Messages.properties" : "Messages_fr.properties";
    List<String> all = new ArrayList<>();
    try (Stream<Path> files = Files.walk(RESOURCES)) {
      for (Path bundle : files.filter(f -> f.endsWith(file)).toList()) {
        if (!Set.of("desktop", "editor").contains(bundle.getParent().getFileName().toString())) {
          Properties texts = new Properties();
          texts.load(Files.newBufferedReader(bundle));
          texts.values().forEach(t -> all.add(t.toString()));
        }
      }
    }
    return all;
  }

  /**
   * The plan's own language decides, then what the packet is asked for; the plan stays as it is.
   */
  @Test
  void aPacketIsInTheLanguageAskedForAndItsPlanAsItWas(@TempDir Path folder) throws Exception {
    Plan plan = PlanFile.read(SAMPLES.resolve("tolverby-cabin.json")).plan();
    Design design = Pipeline.solve(plan);
    Request french =
        Request.everything(plan.unit())
            .withOutputs(EnumSet.of(Output.TXT, Output.HTML, Output.PLAN, Output.CSV))
            .withLanguage(Optional.of(Language.FRENCH));
    Packet.write(design, french, folder, "cabin");
    String text = Files.readString(folder.resolve("cabin-figures.txt"));
    assertThat(text).contains("Lignes du toit", "fa\u00eetage", "charpente");
    assertThat(Files.readString(folder.resolve("cabin.html"))).contains("<html lang=\"fr\"");
    assertThat(PlanFile.read(folder.resolve("cabin-plan.json")).plan()).isEqualTo(plan);
    // Figures for programs keep their point: RFC 4180 has nothing to say, spreadsheets do.
    assertThat(Files.readString(folder.resolve("cabin-figures.csv")))
        .contains(" pi\u00b2", "\u00b0")
        .doesNotContainPattern(",\"[0-9]+,[0-9]+ ?(pi\u00b2|\u00b0|%)?\"");
    Plan own = plan.spoken(Language.FRENCH);
    Packet.write(
        Pipeline.solve(own),
        Request.everything(plan.unit()).withOutputs(EnumSet.of(Output.TXT)),
        folder,
        "own");
    assertThat(Files.readString(folder.resolve("own-figures.txt"))).isEqualTo(text);
  }
}
