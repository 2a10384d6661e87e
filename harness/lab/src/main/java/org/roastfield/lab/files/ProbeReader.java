package org.roastfield.lab.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.cook.Instrument;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stem;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;

/** Reads the probes of a cook. */
final class ProbeReader {

  private final Shape shape;
  private final List<Fact> facts;

  /**
   * @param facts list that statements are added to
   */
  ProbeReader(Shape shape, List<Fact> facts) {
    this.shape = shape;
    this.facts = facts;
  }

  List<Probe> read(Section cook) {
    List<Probe> probes = new ArrayList<>();
    if (cook.has("probes")) {
      for (Entry item : cook.required("probes").items()) {
        probes.add(probe(item, probes));
      }
    }
    return probes;
  }

  private Probe probe(Entry entry, List<Probe> earlier) {
    Section item =
        entry.section("name", "depth", "off-centre", "response", "stem", "bias", "resolution");
    Entry nameEntry = item.required("name");
    String name = nameEntry.name();
    boolean taken = earlier.stream().anyMatch(probe -> probe.name().equals(name));
    if (taken || name.equals(Probe.CORE.name()) || name.equals(Probe.SURFACE.name())) {
      throw nameEntry.error("a name of its own, neither core nor surface nor an earlier probe's");
    }
    Probe probe = place(item, name).with(instrument(item));
    entry.guard(() -> probe.insertion(shape));
    for (String key : List.of("response", "stem", "bias", "resolution")) {
      item.optional(key).ifPresent(value -> value.collect("probe " + name + ", " + key, facts));
    }
    return probe;
  }

  private Probe place(Section item, String name) {
    Optional<Entry> offset = item.optional("off-centre");
    boolean slab = shape instanceof Slab;
    double half = shape.halfThickness();
    if (offset.isPresent()) {
      item.optional("depth")
          .ifPresent(
              depth -> {
                throw depth.error("either depth or off-centre");
              });
      facts.add(new Fact("probe " + name, offset.get().text() + " off the core"));
      return Probe.besideCore(
          name, offset.get().quantity(Dimension.LENGTH, slab ? -half : 0, half));
    }
    Entry depth = item.required("depth");
    facts.add(new Fact("probe " + name, depth.text() + " deep"));
    return Probe.atDepth(name, depth.quantity(Dimension.LENGTH, 0, slab ? 2 * half : half));
  }

  private static Instrument instrument(Section item) {
    return new Instrument(
        value(item, "response", Dimension.TIME, 0, 3600),
        item.optional("stem").map(ProbeReader::stem).orElse(Stem.NONE),
        value(item, "bias", Dimension.TEMPERATURE_DIFFERENCE, -20, 20),
        value(item, "resolution", Dimension.TEMPERATURE_DIFFERENCE, 0, 10));
  }

  private static Stem stem(Entry entry) {
    Section section = entry.section("diameter", "fin-length", "excess", "air-share", "inserted");
    double excess = value(section, "excess", Dimension.TEMPERATURE_DIFFERENCE, -300, 300);
    Optional<Entry> diameter = section.optional("diameter");
    if (diameter.isPresent() == section.has("fin-length")) {
      throw entry.error("either diameter or fin-length");
    }
    double length =
        diameter
            .map(value -> Stem.ofTube(value.quantity(Dimension.LENGTH, 1e-3, 1e-2)).finLength())
            .orElseGet(() -> section.quantity("fin-length", Dimension.LENGTH, 0, 0.05));
    double inserted =
        section.optional("inserted").map(e -> e.quantity(Dimension.LENGTH, 1e-3, 1)).orElse(0.0);
    double airShare =
        section.optional("air-share").map(e -> e.quantity(Dimension.SHARE, 0, 1)).orElse(0.0);
    return new Stem(length, excess, airShare, inserted);
  }

  private static double value(
      Section section, String key, Dimension dimension, double low, double high) {
    return section.optional(key).map(entry -> entry.quantity(dimension, low, high)).orElse(0.0);
  }
}
