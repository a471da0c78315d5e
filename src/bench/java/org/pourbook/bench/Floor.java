package org.pourbook.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.XMLStreamWriter;

/**
 * What no program can do without: the input inflated and its XML parsed, the output's XML written
 * and deflated. The output's parts come from another thread that parses them, whose time is not
 * counted: a program has them from its own work.
 */
final class Floor {

  private static final OperatingSystemMXBean PROCESS =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  private static final int BATCH = 4096;

  /** Ends the batches of a part. */
  private static final XmlEvent[] LAST = {};

  private Floor() {}

  /**
   * Prints a line a stage: name, nanoseconds, nanoseconds of CPU; the last is the whole process.
   *
   * @param args the jobs workbook, the price book, the order workbook, the copy to be written
   */
  public static void main(String[] args) throws Exception {
    long start = System.nanoTime();
    long cpu = PROCESS.getProcessCpuTime();
    parse(Path.of(args[0]));
    parse(Path.of(args[1]));
    print("read", System.nanoTime() - start, PROCESS.getProcessCpuTime() - cpu);
    cpu = PROCESS.getProcessCpuTime();
    Copy copy = new Copy(Path.of(args[2]));
    copy.writeTo(Path.of(args[3]));
    long parsing = copy.parsingNanos();
    print("write", copy.writingNanos(), PROCESS.getProcessCpuTime() - cpu - parsing);
    print("all", System.nanoTime() - start, PROCESS.getProcessCpuTime() - parsing);
  }

  private static void print(String name, long first, long second) {
    System.out.println(name + "\t" + first + "\t" + second);
  }

  private static boolean isXml(ZipEntry entry) {
    return entry.getName().endsWith(".xml") || entry.getName().endsWith(".rels");
  }

  private static XMLInputFactory parsers() {
    XMLInputFactory parsers = XMLInputFactory.newDefaultFactory();
    parsers.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    return parsers;
  }

  private static void parse(Path workbook) throws IOException, XMLStreamException {
    XMLInputFactory parsers = parsers();
    try (ZipFile zip = new ZipFile(workbook.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        try (InputStream in = zip.getInputStream(entry)) {
          if (isXml(entry)) {
            XMLStreamReader reader = parsers.createXMLStreamReader(in);
            while (reader.hasNext()) {
              XmlEvent.of(reader);
            }
          } else {
            in.transferTo(OutputStream.nullOutputStream());
          }
        }
      }
    }
  }

  /** A workbook parsed by one thread and written by another. */
  private static final class Copy {

    private final Path source;
    private final BlockingQueue<XmlEvent[]> queue = new ArrayBlockingQueue<>(64);
    private final Thread parser = new Thread(this::parseAll, "parser");
    private volatile long parsing;
    private long waiting;
    private long writing;

    Copy(Path source) {
      this.source = source;
    }

    long parsingNanos() {
      return parsing;
    }

    /** Returns how long the writer wrote, without what it waited for the parser. */
    long writingNanos() {
      return writing - waiting;
    }

    void writeTo(Path target) throws Exception {
      long start = System.nanoTime();
      parser.start();
      XMLOutputFactory writers = XMLOutputFactory.newDefaultFactory();
      try (ZipFile zip = new ZipFile(source.toFile());
          ZipOutputStream out =
              new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(target)))) {
        for (ZipEntry entry : Collections.list(zip.entries())) {
          out.putNextEntry(new ZipEntry(entry.getName()));
          if (isXml(entry)) {
            XMLStreamWriter writer = writers.createXMLStreamWriter(out, "UTF-8");
            for (XmlEvent[] batch = take(); batch != LAST; batch = take()) {
              for (XmlEvent event : batch) {
                if (event != null) {
                  event.writeTo(writer);
                }
              }
            }
            writer.flush();
          } else {
            try (InputStream in = zip.getInputStream(entry)) {
              in.transferTo(out);
            }
          }
          out.closeEntry();
        }
      }
      parser.join();
      writing = System.nanoTime() - start;
    }

    private XmlEvent[] take() throws InterruptedException {
      long before = System.nanoTime();
      XmlEvent[] batch = queue.take();
      waiting += System.nanoTime() - before;
      return batch;
    }

    private void parseAll() {
      XMLInputFactory parsers = parsers();
      try (ZipFile zip = new ZipFile(source.toFile())) {
        List<? extends ZipEntry> entries = Collections.list(zip.entries());
        for (ZipEntry entry : entries) {
          if (isXml(entry)) {
            try (InputStream in = zip.getInputStream(entry)) {
              parsePart(parsers.createXMLStreamReader(in));
            }
          }
        }
        parsing = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      } catch (IOException | XMLStreamException | InterruptedException e) {
        throw new IllegalStateException(e);
      }
    }

    private void parsePart(XMLStreamReader reader) throws XMLStreamException, InterruptedException {
      XmlEvent[] batch = new XmlEvent[BATCH];
      int n = 0;
      while (reader.hasNext()) {
        if (n == BATCH) {
          queue.put(batch);
          batch = new XmlEvent[BATCH];
          n = 0;
        }
        batch[n++] = XmlEvent.of(reader);
      }
      queue.put(batch);
      queue.put(LAST);
    }
  }
}
