package org.slatwright.exporter.html;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.jsoup.Jsoup;
import org.slatwright.exporter.figures.XmlText;

/** Against jsoup, which reads HTML as browsers do. */
class HtmlWriterTest {

  @Property(tries = 300)
  void anyTextIsReadBackAsWritten(@ForAll String text) {
    Element root = Element.of("html", Element.of("b", "." + text).with("title", "." + text));
    org.jsoup.nodes.Element read = Jsoup.parse(HtmlWriter.document(root)).selectFirst("b");
    String said = "." + XmlText.legal(text);
    assertEquals(said, read.wholeText());
    assertEquals(said, read.attr("title"));
    assertEquals(0, read.children().size());
  }
}
