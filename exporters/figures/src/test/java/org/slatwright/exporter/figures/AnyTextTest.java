package org.slatwright.exporter.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.w3c.dom.Element;

class AnyTextTest {

  @Property(tries = 200)
  void anyTextIsReadBackAsWritten(@ForAll String text) throws Exception {
    SvgDocument svg = new SvgDocument();
    Element root = svg.root();
    svg.addText(root, "title", text);
    svg.set(root, "aria-label", text);
    Element read =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg.bytes()))
            .getDocumentElement();
    assertEquals(XmlText.legal(text), read.getAttribute("aria-label"));
    assertEquals(XmlText.legal(text), read.getElementsByTagName("title").item(0).getTextContent());
  }

  @Property(tries = 200)
  void textThatXmlCanSayIsLeftAsItIs(@ForAll String text) {
    String legal = XmlText.legal(text);
    assertEquals(legal, XmlText.legal(legal));
    assertEquals(text.codePointCount(0, text.length()), legal.codePointCount(0, legal.length()));
  }

  @Property(tries = 100)
  void anyWishesGiveValidIdsThatDiffer(@ForAll @Size(max = 20) List<String> wishes) {
    UniqueIds ids = new UniqueIds();
    Set<String> given = new HashSet<>();
    for (String wish : wishes) {
      String id = ids.like(wish);
      assertTrue(id.matches("[A-Za-z_][A-Za-z0-9_-]*"), id);
      assertTrue(given.add(id), id);
    }
  }
}
