package org.pourbook.book.out;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Anchor;
import org.pourbook.plan.Drawing.Mark;
import org.pourbook.plan.Drawing.Words;

/** Writes drawings as SVG files, one a job. */
public final class PlanFiles {

  private static final String SVG = "http://www.w3.org/2000/svg";

  /** How far below their middle letters stand, as a share of their size. */
  private static final double FOOT = 0.35;

  /** A page of letter size, lying [pt]. */
  private static final double WIDTH = 792;

  private static final double HEIGHT = 612;

  /** Where the drawing stands on it. */
  private static final double SIDE = (WIDTH - Drawing.WIDTH) / 2;

  private static final double HEAD = 66;

  private PlanFiles() {}

  /**
   * Writes {@code JOB.svg} for each drawing into a folder, which is made when missing.
   *
   * @throws IOException if a file cannot be written, or exists and {@code overwrite} is false
   */
  public static void write(List<Drawing> drawings, Path folder, boolean overwrite)
      throws IOException {
    WholeOutput.folder(
        folder,
        overwrite,
        part -> {
          for (Drawing drawing : drawings) {
            try (OutputStream out = Files.newOutputStream(part.resolve(name(drawing)))) {
              write(drawing, out);
            }
          }
        });
  }

  private static String title(Drawing drawing) {
    return drawing.job() + (drawing.description().isEmpty() ? "" : ", " + drawing.description());
  }

  /** A job's code may hold what no file name can. */
  private static String name(Drawing drawing) {
    return drawing.job().replaceAll("[^\\p{L}\\p{N} ._-]", "_") + ".svg";
  }

  static void write(Drawing drawing, OutputStream out) throws IOException {
    try {
      XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(out, "UTF-8");
      xml.writeStartDocument("UTF-8", "1.0");
      xml.writeStartElement("svg");
      xml.writeDefaultNamespace(SVG);
      xml.writeAttribute("width", "11in");
      xml.writeAttribute("height", "8.5in");
      xml.writeAttribute(
          "viewBox", text(-SIDE) + " " + text(-HEAD) + " " + text(WIDTH) + " " + text(HEIGHT));
      xml.writeAttribute("font-family", "Helvetica, Arial, sans-serif");
      letters(xml, new Words(0, -HEAD / 3, title(drawing), 12, 0, Anchor.START), false);
      for (Mark mark : drawing.marks()) {
        write(xml, mark);
      }
      xml.writeEndElement();
      xml.writeEndDocument();
      xml.close();
    } catch (XMLStreamException e) {
      throw new IOException(e);
    }
  }

  private static void write(XMLStreamWriter xml, Mark mark) throws XMLStreamException {
    if (mark instanceof Drawing.Line line) {
      line(xml, line);
    } else if (mark instanceof Drawing.Dot dot) {
      xml.writeEmptyElement("circle");
      xml.writeAttribute("cx", text(dot.x()));
      xml.writeAttribute("cy", text(dot.y()));
      xml.writeAttribute("r", text(dot.radius()));
    } else if (mark instanceof Words words) {
      words(xml, words);
    }
  }

  private static void line(XMLStreamWriter xml, Drawing.Line line) throws XMLStreamException {
    xml.writeEmptyElement("line");
    xml.writeAttribute("x1", text(line.x1()));
    xml.writeAttribute("y1", text(line.y1()));
    xml.writeAttribute("x2", text(line.x2()));
    xml.writeAttribute("y2", text(line.y2()));
    xml.writeAttribute("stroke", "black");
    xml.writeAttribute("stroke-width", text(line.stroke().width()));
    if (!line.stroke().dashes().isEmpty()) {
      xml.writeAttribute("stroke-dasharray", line.stroke().dashes());
    }
  }

  /** White round the letters keeps them readable where lines cross them. */
  private static void words(XMLStreamWriter xml, Words words) throws XMLStreamException {
    letters(xml, words, true);
    letters(xml, words, false);
  }

  private static void letters(XMLStreamWriter xml, Words words, boolean white)
      throws XMLStreamException {
    String at = text(words.x()) + " " + text(words.y());
    xml.writeStartElement("text");
    if (white) {
      xml.writeAttribute("fill", "white");
      xml.writeAttribute("stroke", "white");
      xml.writeAttribute("stroke-width", "3");
    }
    xml.writeAttribute("font-size", text(words.size()));
    xml.writeAttribute("text-anchor", words.anchor() == Anchor.MIDDLE ? "middle" : "start");
    xml.writeAttribute("transform", "translate(" + at + ") rotate(" + text(words.degrees()) + ")");
    xml.writeAttribute("y", text(words.size() * FOOT));
    xml.writeCharacters(words.text());
    xml.writeEndElement();
  }

  /** To a hundredth of a point, without an exponent and without the machine's locale. */
  private static String text(double points) {
    BigDecimal rounded = BigDecimal.valueOf(points).setScale(2, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
