package longpoint.export;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import longpoint.geometry.Point;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** An SVG file read back by the platform's XML parser, with document types forbidden. */
record SvgFile(Document document) {
  static SvgFile read(byte[] bytes) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setNamespaceAware(true);
    return new SvgFile(factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes)));
  }

  Element root() {
    return document.getDocumentElement();
  }

  Stream<Element> elements(String name) {
    NodeList nodes = document.getElementsByTagNameNS("*", name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements.stream();
  }

  Element byId(String id) {
    return elements("*").filter(e -> e.getAttribute("id").equals(id)).findFirst().orElseThrow();
  }

  /** Corners of a path of straight lines, as they stand in the file: y down. */
  static List<Point> corners(Element path) {
    List<Point> points = new ArrayList<>();
    for (String pair : path.getAttribute("d").replace("Z", "").split("[ML]")) {
      if (!pair.isEmpty()) {
        String[] xy = pair.trim().split(" ");
        points.add(new Point(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])));
      }
    }
    return points;
  }
}
