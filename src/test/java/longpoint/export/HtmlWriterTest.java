package longpoint.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longpoint.drawing.Anchor;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.geometry.Point;
import longpoint.sheets.GableHouse;
import longpoint.sheets.Layers;
import longpoint.sheets.Paper;
import longpoint.sheets.SheetSet;
import longpoint.sheets.Solved;
import longpoint.wording.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;

/** The page for phones, read back by a strict XML parser, which a browser's is not. */
class HtmlWriterTest {
  private static final String DOCTYPE = "<!DOCTYPE html>\n";
  private static final Table RAFTERS =
      new Table(
          "Rafters",
          List.of("mark", "length"),
          List.of(List.of("R1", "12'-3\""), List.of("R1", "12'-3\""), List.of("R2", "9'-0\"")),
          List.of("cut long"));

  private static byte[] bytes(PhonePage page) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    HtmlWriter.write(page, out);
    return out.toByteArray();
  }

  private static SvgFile read(PhonePage page) throws Exception {
    String html = new String(bytes(page), StandardCharsets.UTF_8);
    assertThat(html).startsWith(DOCTYPE);
    return SvgFile.read(html.substring(DOCTYPE.length()).getBytes(StandardCharsets.UTF_8));
  }

  private static PhonePage page(List<Page> sheets, Table... tables) {
    return new PhonePage(
        Language.ENGLISH,
        "House",
        List.of("Lengths in feet."),
        List.of("Work at height."),
        List.of(new PhonePage.Warning("error: no eave (main/0)", "Set a slope.")),
        sheets,
        List.of(tables));
  }

  private static PhonePage house() {
    List<Page> once =
        SheetSet.of(Solved.roof(GableHouse.PLAN, GableHouse.SURFACE), Paper.A3).pages();
    return page(Stream.concat(once.stream(), once.stream()).toList(), RAFTERS);
  }

  @Test
  void everythingIsOnThePage() throws Exception {
    SvgFile html = read(house());
    assertThat(html.root().getTextContent())
        .contains("House", "Lengths in feet.", "Work at height.", "no eave", "Set a slope.")
        .contains("Rafters", "12'-3\"", "R2", "cut long");
    assertThat(html.elements("svg")).hasSize(house().sheets().size());
    assertThat(html.elements("input")).hasSize(3);
  }

  @Test
  void sheetsThatLookAlikeShareNoId() throws Exception {
    SvgFile html = read(house());
    List<String> ids =
        html.elements("*").map(e -> e.getAttribute("id")).filter(i -> !i.isEmpty()).toList();
    assertThat(ids).doesNotHaveDuplicates().allMatch(i -> i.matches("[A-Za-z][A-Za-z0-9._-]*"));
    assertThat(ids).contains("sheet-1.A-WALL-OTLN.main.0", "sheet-2.A-WALL-OTLN.main.0");
  }

  @Test
  void linksLeadNowhereButIntoThePage() throws Exception {
    SvgFile html = read(house());
    Set<String> ids = html.elements("*").map(e -> e.getAttribute("id")).collect(Collectors.toSet());
    assertThat(html.elements("a").map(a -> a.getAttribute("href")))
        .isNotEmpty()
        .allMatch(h -> h.startsWith("#") && ids.contains(h.substring(1)));
    List<String> attributes = html.elements("*").flatMap(HtmlWriterTest::names).distinct().toList();
    assertThat(attributes)
        .doesNotContain("src", "srcset", "data", "action", "xlink:href", "style", "background");
    assertThat(html.elements("*").map(Element::getLocalName))
        .doesNotContain("link", "img", "iframe", "object", "embed", "form", "base", "image", "use");
    String text = new String(bytes(house()), StandardCharsets.UTF_8);
    assertThat(
            text.replace("http://www.w3.org/2000/svg", "")
                .replace("http://www.w3.org/1999/xhtml", ""))
        .doesNotContain("http:", "https:", "url(", "@import", "fetch(", "XMLHttpRequest");
  }

  /** Content Security Policy Level 3 (W3C), 2.3.1: a hash source is the digest in base64. */
  @Test
  void thePolicyLetsNothingRunButTheScriptOfThePage() throws Exception {
    SvgFile html = read(house());
    String policy =
        html.elements("meta")
            .filter(m -> m.getAttribute("http-equiv").equals("Content-Security-Policy"))
            .findFirst()
            .orElseThrow()
            .getAttribute("content");
    String script = html.elements("script").findFirst().orElseThrow().getTextContent();
    String style = html.elements("style").findFirst().orElseThrow().getTextContent();
    assertThat(policy)
        .isEqualTo(
            "default-src 'none'; style-src '%s'; script-src '%s'; base-uri 'none'; form-action"
                + " 'none'",
            digest(style), digest(script));
    assertThat(html.elements("script")).hasSize(1);
    assertThat(html.elements("*").flatMap(HtmlWriterTest::names))
        .noneMatch(n -> n.startsWith("on"));
  }

  private static String digest(String text) throws Exception {
    byte[] sum = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    return "sha256-" + Base64.getEncoder().encodeToString(sum);
  }

  private static Stream<String> names(Element e) {
    return Stream.iterate(0, i -> i < e.getAttributes().getLength(), i -> i + 1)
        .map(i -> ((Attr) e.getAttributes().item(i)).getName());
  }

  @Test
  void aTickBelongsToTheFigureItWasMadeFor() throws Exception {
    List<String> before = ticks(RAFTERS);
    assertThat(before).hasSize(3).doesNotHaveDuplicates();
    List<List<String>> changed =
        List.of(RAFTERS.rows().get(0), RAFTERS.rows().get(1), List.of("R2", "9'-1\""));
    List<String> after = ticks(new Table("Rafters", RAFTERS.heads(), changed, List.of()));
    assertThat(after.subList(0, 2)).isEqualTo(before.subList(0, 2));
    assertThat(after.get(2)).isNotIn(before);
  }

  private static List<String> ticks(Table table) throws Exception {
    return read(page(List.of(), table))
        .elements("input")
        .map(i -> i.getAttribute("data-row"))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "</title><script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "' onclick='alert(1)",
        "</style><style>*{display:none}",
        "<!-- --> ]]> &amp; &lt; &#60;script&#62;",
        "javascript:alert(1) %s %1$s ${x} {{x}}",
        "屋根 \ud83c\udfe0"
      })
  void hostileTextIsOnlyText(String hostile) throws Exception {
    SvgFile plain = read(everywhere("x"));
    SvgFile html = read(everywhere(hostile));
    assertThat(html.elements("title").findFirst().orElseThrow().getTextContent())
        .isEqualTo(hostile);
    assertThat(html.elements("h1").findFirst().orElseThrow().getTextContent()).isEqualTo(hostile);
    assertThat(html.elements("li").findFirst().orElseThrow().getTextContent()).isEqualTo(hostile);
    assertThat(html.elements("text").findFirst().orElseThrow().getTextContent()).isEqualTo(hostile);
    // The same elements and attributes as with a title of one letter, and no others.
    assertThat(html.elements("*").map(Element::getLocalName).toList())
        .isEqualTo(plain.elements("*").map(Element::getLocalName).toList());
    assertThat(html.elements("*").flatMap(HtmlWriterTest::names).distinct().sorted().toList())
        .isEqualTo(plain.elements("*").flatMap(HtmlWriterTest::names).distinct().sorted().toList());
  }

  private static PhonePage everywhere(String text) {
    Mark mark = new Mark.Text(new Point(5, 5), text, 2.5, 0, Anchor.START, Layers.TEXT, text);
    return new PhonePage(
        Language.ENGLISH,
        text,
        List.of(text),
        List.of(text),
        List.of(new PhonePage.Warning(text, text)),
        List.of(new Page(text, text, 40, 30, List.of(mark))),
        List.of(new Table(text, List.of(text), List.of(List.of(text)), List.of(text))));
  }

  @Test
  void noPageWithoutItsCautions() {
    assertThatThrownBy(
            () ->
                new PhonePage(
                    Language.ENGLISH, "t", List.of(), List.of(), List.of(), List.of(), List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void samePageSameBytes() throws IOException {
    assertThat(bytes(house())).isEqualTo(bytes(house()));
    assertThat(new String(bytes(house()), StandardCharsets.UTF_8)).doesNotContain("\r");
  }

  @Test
  void aFullDiskIsSaid() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("no space left");
          }
        };
    assertThatThrownBy(() -> HtmlWriter.write(house(), full))
        .isInstanceOf(IOException.class)
        .hasMessage("no space left");
  }
}
