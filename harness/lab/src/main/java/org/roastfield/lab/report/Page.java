package org.roastfield.lab.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;

/** An HTML file that stands alone: its styles are inside, and it loads nothing and runs nothing. */
final class Page {

  /** Forbids whatever the markup might still ask for. */
  private static final String POLICY = "default-src 'none'; style-src 'unsafe-inline'";

  private final Markup html = new Markup();
  private int figures;

  private Page() {}

  /**
   * Starts a page.
   *
   * @param title heading, and name of the window
   * @param kind what sort of page this is, in a few words
   * @param badges what must be known before anything is read
   * @param lead lines under the heading
   */
  static Page start(String title, String kind, List<String> badges, List<String> lead) {
    Page page = new Page();
    page.head(title, kind);
    page.html.open("body").newLine().open("header").newLine();
    page.html.element("p", kind, "class", "kind").element("h1", title).newLine();
    badges.forEach(badge -> page.html.element("p", badge, "class", "badge").newLine());
    lead.forEach(line -> page.html.element("p", line, "class", "lead").newLine());
    page.html.close().newLine().open("main").newLine();
    return page;
  }

  /** A part of the page under a heading. */
  Page section(String heading, Consumer<Page> content) {
    html.open("section").newLine().element("h2", heading).newLine();
    content.accept(this);
    html.close().newLine();
    return this;
  }

  /** Parts beside each other where there is room, below each other where not. */
  Page beside(List<Consumer<Page>> parts) {
    html.open("div", "class", "beside").newLine();
    for (Consumer<Page> part : parts) {
      html.open("div").newLine();
      part.accept(this);
      html.close().newLine();
    }
    html.close().newLine();
    return this;
  }

  /** A paragraph. */
  Page paragraph(String text) {
    html.element("p", text).newLine();
    return this;
  }

  /** A figure under the next number. */
  Page figure(Figure figure) {
    figures++;
    figure.writeTo(html, figures);
    return this;
  }

  /** A table in sight. */
  Page table(Table table) {
    table.writeTo(html);
    return this;
  }

  /** For what this class does not write. */
  Markup html() {
    return html;
  }

  /** The whole file. */
  String finished() {
    return html.close().newLine().close().newLine().close().newLine().finished();
  }

  private void head(String title, String kind) {
    html.raw("<!DOCTYPE html>\n").open("html", "lang", "en").newLine().open("head").newLine();
    html.empty("meta", "charset", "utf-8").newLine();
    html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    html.newLine().empty("meta", "name", "color-scheme", "content", "light dark").newLine();
    html.empty("meta", "http-equiv", "Content-Security-Policy", "content", POLICY).newLine();
    html.element("title", title + ", " + kind).newLine();
    html.open("style").raw(styles("figure.css")).raw(styles("page.css")).close().newLine();
    html.close().newLine();
  }

  /** A style sheet that lies beside this class. */
  static String styles(String name) {
    try (InputStream in = Page.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("style sheet not packed with the program: " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("style sheet cannot be read: " + name, e);
    }
  }
}
