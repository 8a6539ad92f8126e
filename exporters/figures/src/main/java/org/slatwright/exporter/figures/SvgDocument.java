package org.slatwright.exporter.figures;

import java.awt.Shape;
import java.io.ByteArrayOutputStream;
import java.io.StringWriter;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGShape;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * An SVG document under construction: elements, shapes, numbers, and in the end its bytes.
 *
 * <p>Shapes go through Batik's SVGShape, the part of its SVGGraphics2D that spells them. The whole
 * would open a picture and the machine's fonts first, which fails where there are none.
 */
public final class SvgDocument {

  private static final String SVG = "http://www.w3.org/2000/svg";

  private final Document document;
  private final SvgNumbers numbers;
  private final SVGShape shapes;
  private final UniqueIds ids;

  /** A file of its own. */
  public SvgDocument() {
    this(new UniqueIds());
  }

  /**
   * A part of a larger document.
   *
   * @param ids of all of it
   */
  public SvgDocument(UniqueIds ids) {
    this.ids = ids;
    document = newDocument();
    numbers = new SvgNumbers(document);
    shapes = new SVGShape(numbers);
  }

  /** The outermost element. */
  Element root() {
    Element root = document.createElementNS(SVG, "svg");
    document.appendChild(root);
    return root;
  }

  /** A new element at the end of {@code parent}. */
  public Element add(Element parent, String name) {
    Element element = document.createElementNS(SVG, name);
    parent.appendChild(element);
    return element;
  }

  /** A new element that holds {@code text}. */
  Element addText(Element parent, String name, String text) {
    Element element = add(parent, name);
    element.setTextContent(XmlText.legal(text));
    return element;
  }

  /** A shape, as the simplest element that says it exactly. */
  Element addShape(Element parent, Shape shape, String styleClass) {
    Element element = shapes.toSVG(shape);
    parent.appendChild(element);
    set(element, "class", styleClass);
    return element;
  }

  /** Gives an attribute. */
  void set(Element element, String attribute, String value) {
    element.setAttributeNS(null, attribute, XmlText.legal(value));
  }

  /** Gives an id like the one wished for: valid, and the only one; tells it. */
  String setId(Element element, String wish) {
    String id = ids.like(wish);
    set(element, "id", id);
    return id;
  }

  /** Has spaces at the ends and runs of them drawn as they are. */
  void keepSpaces(Element element) {
    element.setAttributeNS(XMLConstants.XML_NS_URI, "xml:space", "preserve");
  }

  /** As an attribute spells it. */
  String number(double value) {
    return numbers.doubleString(value);
  }

  /** The whole document as a UTF-8 file. */
  public byte[] bytes() throws TransformerException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    transformer().transform(new DOMSource(document), new StreamResult(bytes));
    return bytes.toByteArray();
  }

  /** Its outermost element, to stand inside a larger document. */
  public String fragment() throws TransformerException {
    StringWriter text = new StringWriter();
    Transformer transformer = transformer();
    transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
    transformer.transform(new DOMSource(document), new StreamResult(text));
    return text.toString();
  }

  private static Transformer transformer() throws TransformerException {
    Transformer transformer = TransformerFactory.newDefaultInstance().newTransformer();
    transformer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
    transformer.setOutputProperty(OutputKeys.INDENT, "yes");
    transformer.setOutputProperty("{http://xml.apache.org/xslt}indent-amount", "1");
    return transformer;
  }

  private static Document newDocument() {
    try {
      // The JDK's own, whatever else lies on the class path: the same bytes everywhere.
      Document document =
          DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().newDocument();
      document.setXmlStandalone(true);
      return document;
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException(e);
    }
  }
}
