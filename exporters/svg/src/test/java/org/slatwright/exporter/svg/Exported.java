package org.slatwright.exporter.svg;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.RecordingDestination;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.WareRack;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Sheets as the exporter writes them, and as an XML parser reads them. */
final class Exported {

  static final String SVG = "http://www.w3.org/2000/svg";

  private Exported() {}

  /** The file of one sheet, with {@code text} as the option of that name. */
  static byte[] bytes(Sheet sheet, String text) throws ExportException, IOException {
    return files(planOf(sheet), text).bytes(sheet.name() + ".svg");
  }

  /** All the files of a plan. */
  static RecordingDestination files(Plan plan, String text) throws ExportException, IOException {
    SvgExporter exporter = new SvgExporter();
    RecordingDestination destination = new RecordingDestination();
    exporter.export(plan, OptionValues.of(exporter.options(), Map.of("text", text)), destination);
    return destination;
  }

  /** The file of one sheet, read by the JDK's parser, which fetches nothing. */
  static Document document(Sheet sheet, String text) throws ExportException, IOException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    try {
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes(sheet, text)));
    } catch (ParserConfigurationException | SAXException e) {
      throw new AssertionError("not well-formed", e);
    }
  }

  /** Every SVG element of that name, {@code *} for all. */
  static List<Element> elements(Document document, String name) {
    NodeList found = document.getElementsByTagNameNS(SVG, name);
    return IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i)).toList();
  }

  private static Plan planOf(Sheet sheet) {
    return SamplePlans.withDrawings(WareRack.inMillimetres(), List.of(sheet), Templates.NONE);
  }
}
