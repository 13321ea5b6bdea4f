package longpoint.export;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import longpoint.drawing.Page;
import longpoint.stop.CalledOff;
import longpoint.wording.Language;
import longpoint.wording.Phrasebook;
import longpoint.wording.Spacing;

/**
 * Writes one page for phones: the sheets to pinch and read, the figures to tick off, in one file
 * that needs no network.
 *
 * <p>The page is HTML that is well-formed XML too. It refers to nothing outside itself, and its
 * content security policy lets a browser run and fetch nothing but the one script and the one style
 * sheet in it, each named by its digest: text of the plan is only ever text. Where a viewer runs no
 * script, everything can still be read; only the zoom buttons and the memory of the ticks are
 * missing. Same page in, same bytes out.
 */
public final class HtmlWriter {
  private static final String STYLE = "phone-page.css";
  private static final String SCRIPT = "phone-page.js";

  private final Writer out;
  private final Language language;
  private final Phrasebook words;
  private final Lines lines;

  private HtmlWriter(Writer out, Language language) {
    this.out = out;
    this.language = language;
    this.words = Phrasebook.of("export", language);
    this.lines = new Lines(out);
  }

  /**
   * Writes the page in UTF-8. The stream is flushed, not closed.
   *
   * @throws IOException if the stream cannot be written
   */
  public static void write(PhonePage page, OutputStream out) throws IOException {
    Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
    HtmlWriter html = new HtmlWriter(writer, page.language());
    try {
      html.head(page.title());
      html.top(page);
      html.cautions(page.cautions());
      html.warnings(page.warnings());
      html.sheets(page.sheets());
      new HtmlTables(writer, page.title(), html.words).write(page.tables());
      html.close();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    writer.flush();
  }

  private void head(String title) {
    String style = resource(STYLE);
    line("<!DOCTYPE html>");
    line("<html lang=\"%s\" xmlns=\"http://www.w3.org/1999/xhtml\">", language.key());
    line("<head>");
    line("<meta charset=\"utf-8\" />");
    line(
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src"
            + " '%s'; script-src '%s'; base-uri 'none'; form-action 'none'\" />",
        policyDigest(style), policyDigest(resource(SCRIPT)));
    line("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\" />");
    line("<meta name=\"color-scheme\" content=\"light dark\" />");
    // Or a phone takes a row of figures for a number to call.
    line("<meta name=\"format-detection\" content=\"telephone=no\" />");
    line("<title>%s</title>", XmlText.escaped(title));
    line("<style>%s</style>", style);
    line("</head>");
    // The script is the same for every page: its words stand here.
    line(
        "<body data-count=\"%s\" data-kept=\"%s\" data-lost=\"%s\" data-ask=\"%s\">",
        text("page.done.count"),
        text("page.tick.kept"),
        text("page.tick.lost"),
        text("page.clear.ask"));
  }

  private void top(PhonePage page) {
    line("<header>");
    line("<h1>%s</h1>", XmlText.escaped(page.title()));
    page.abouts().forEach(a -> line("<p>%s</p>", XmlText.escaped(a)));
    line("<nav>");
    for (int i = 0; i < page.sheets().size(); i++) {
      Page sheet = page.sheets().get(i);
      String name = SvgWriter.title(sheet).replace(", " + page.title(), "");
      line("<a href=\"#sheet-%s\">%s</a>", i + 1, XmlText.escaped(name));
    }
    line("<a href=\"#figures\">%s</a>", text("page.figures"));
    line("</nav>");
    line("</header>");
    line("<main>");
  }

  private void cautions(List<String> cautions) {
    line("<section class=\"cautions\">");
    line("<h2>%s</h2>", text("page.before"));
    line("<ul>");
    cautions.forEach(c -> line("<li>%s</li>", XmlText.escaped(Spacing.kept(c))));
    line("</ul>");
    line("</section>");
  }

  private void warnings(List<PhonePage.Warning> warnings) {
    if (warnings.isEmpty()) {
      return;
    }
    line("<section class=\"warnings\">");
    line("<h2>%s</h2>", text("page.first"));
    line("<ul>");
    for (PhonePage.Warning w : warnings) {
      String cure = w.cure().isEmpty() ? "" : "<br />" + XmlText.escaped(Spacing.kept(w.cure()));
      line("<li>%s%s</li>", XmlText.escaped(Spacing.kept(w.text())), cure);
    }
    line("</ul>");
    line("</section>");
  }

  private void sheets(List<Page> sheets) {
    for (int i = 0; i < sheets.size(); i++) {
      CalledOff.check();
      String id = "sheet-" + (i + 1);
      line("<section class=\"sheet\" id=\"%s\">", id);
      line("<h2>%s</h2>", XmlText.escaped(SvgWriter.title(sheets.get(i))));
      line("<p class=\"bar\" hidden=\"hidden\">");
      button("out", "", "\u2212");
      button("in", "", "+");
      button("fit", "", text("page.fit.face"));
      button("full", back(), text("page.full.face"));
      line("</p>");
      line("<div class=\"view\" tabindex=\"0\">");
      SvgWriter.writeInside(sheets.get(i), id + ".", out);
      line("</div>");
      line("</section>");
    }
  }

  /** What the button that fills the screen says while it is filled. */
  private String back() {
    return String.format(
        Locale.ROOT,
        " data-back=\"%s\" data-back-face=\"%s\"",
        text("page.back"),
        text("page.back.face"));
  }

  private void button(String job, String data, String face) {
    line(
        "<button type=\"button\" data-job=\"%s\" aria-label=\"%s\"%s>%s</button>",
        job, text("page." + job), data, face);
  }

  private String text(String key) {
    return XmlText.escaped(Spacing.kept(words.text(key)));
  }

  private void close() {
    line("</main>");
    line("<script>%s</script>", resource(SCRIPT));
    line("</body>");
    line("</html>");
  }

  /** A part of the page that is the same for every plan. */
  private static String resource(String name) {
    try (InputStream in = HtmlWriter.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("missing from the program: " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** How a content security policy (W3C, level 2 and later) names what it lets run. */
  private static String policyDigest(String text) {
    return "sha256-" + Base64.getEncoder().encodeToString(Digest.of(text));
  }

  private void line(String pattern, Object... values) {
    lines.line(pattern, values);
  }
}
