package longpoint.planfile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import longpoint.plan.Plan;
import longpoint.wording.Phrase;

/**
 * The plan inside a sheet: an SVG sheet carries the whole plan in its metadata, so that whoever is
 * sent the drawing can open the plan it shows.
 *
 * <p>Reading stops once the plan is found, so that a file cut short behind it opens still. A sheet
 * may come from a stranger: a document type is refused, nothing outside the file is ever looked at,
 * and size is limited.
 */
public final class SheetPlan {
  private static final String NAMESPACE = "urn:longpoint:plan";
  private static final String ELEMENT = "plan";
  private static final String SVG = "http://www.w3.org/2000/svg";

  /** A sheet is a few hundred kB, and the plan stands before all drawing. */
  private static final int MOST_BYTES = 64 << 20;

  private SheetPlan() {}

  /** The element that goes into the sheet's {@code <metadata>}: well-formed XML. */
  public static String element(Plan plan) {
    StringBuilder out = new StringBuilder("<").append(ELEMENT);
    out.append(" xmlns=\"").append(NAMESPACE).append("\">\n");
    PlanWriter.write(plan).chars().forEach(c -> append(out, (char) c));
    return out.append("</").append(ELEMENT).append('>').toString();
  }

  /**
   * ASCII only: what is beyond it stands in strings alone, where JSON has its own way to write it.
   * So neither the characters XML cannot hold nor a mail program's encoding can hurt the plan.
   */
  private static void append(StringBuilder out, char c) {
    switch (c) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      default -> {
        if (c < 0x80) {
          out.append(c);
        } else {
          out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
        }
      }
    }
  }

  static Opened read(InputStream in) throws IOException {
    byte[] bytes = in.readNBytes(MOST_BYTES + 1);
    if (bytes.length > MOST_BYTES) {
      throw PlanFileException.whole(Phrase.of("planfile.sheet.none", MOST_BYTES >> 20));
    }
    String json = json(bytes);
    try {
      Opened opened = PlanReader.read(JsonText.read(json.getBytes(StandardCharsets.UTF_8)));
      return new Opened(opened.plan(), opened.notes(), Opened.Source.SHEET);
    } catch (PlanFileException e) {
      throw PlanFileException.whole(Phrase.of("planfile.sheet.inside", e.words()), e);
    }
  }

  private static String json(byte[] bytes) throws PlanFileException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
    try {
      XMLStreamReader xml = factory.createXMLStreamReader(new java.io.ByteArrayInputStream(bytes));
      boolean root = true;
      while (xml.hasNext()) {
        int event = xml.next();
        if (event == XMLStreamConstants.DTD) {
          throw at(xml.getLocation(), "planfile.sheet.docType");
        }
        if (event == XMLStreamConstants.START_ELEMENT) {
          if (root && !(xml.getLocalName().equals("svg") && SVG.equals(xml.getNamespaceURI()))) {
            throw at(xml.getLocation(), "planfile.sheet.neither");
          }
          root = false;
          if (xml.getLocalName().equals(ELEMENT) && NAMESPACE.equals(xml.getNamespaceURI())) {
            return xml.getElementText();
          }
        }
      }
    } catch (XMLStreamException e) {
      throw at(e.getLocation(), "planfile.sheet.malformed");
    }
    throw PlanFileException.whole(Phrase.of("planfile.sheet.noPlan"));
  }

  private static PlanFileException at(Location at, String key) {
    Phrase wrong = Phrase.of(key);
    return at == null
        ? PlanFileException.whole(wrong)
        : PlanFileException.at(at.getLineNumber(), at.getColumnNumber(), wrong);
  }
}
