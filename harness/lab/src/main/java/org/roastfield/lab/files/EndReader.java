package org.roastfield.lab.files;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.StageEnd;

/** Reads the rule that ends a stage, and refuses one that its surroundings can never meet. */
final class EndReader {

  private static final String[] KEYS = {
    "after", "at", "core", "probe", "reaches", "falls-to", "at-latest"
  };

  private final LocalDateTime starts;
  private final List<Probe> probes;

  EndReader(LocalDateTime starts, List<Probe> probes) {
    this.starts = starts;
    this.probes = List.copyOf(probes);
  }

  /** A rule for the core and in words. */
  record Rule(StageEnd end, String words) {}

  Rule read(Entry entry, Reach reach) {
    Section section = entry.section(KEYS);
    List<String> kinds =
        List.of("after", "at", "core", "probe").stream().filter(section::has).toList();
    if (kinds.size() != 1) {
      throw entry.error("exactly one of after, at, core, probe");
    }
    return switch (kinds.get(0)) {
      case "after" -> after(section);
      case "at" -> at(section);
      case "core" -> core(section, reach);
      default -> probe(section, reach);
    };
  }

  private Rule after(Section section) {
    refuse(section, "after", "reaches", "falls-to", "at-latest");
    Entry entry = section.required("after");
    double duration = entry.quantity(Dimension.TIME, 1, StageEnd.LONGEST);
    return new Rule(StageEnd.after(duration), "after " + entry.text());
  }

  private Rule at(Section section) {
    refuse(section, "at", "reaches", "falls-to", "at-latest");
    Entry entry = section.required("at");
    LocalDateTime clock = Clock.read(entry);
    double time = Duration.between(starts, clock).toSeconds();
    if (!(time > 0 && time <= StageEnd.LONGEST)) {
      throw entry.error("a clock time after " + starts + " and within ten days of it");
    }
    return new Rule(StageEnd.at(time), "at " + entry.text());
  }

  private Rule core(Section section, Reach reach) {
    refuse(section, "core", "reaches", "falls-to");
    Entry entry = section.required("core");
    double target = rising(entry, reach);
    return new Rule(
        new StageEnd.Rises(Probe.CORE, target, latest(section)),
        "core reaches " + entry.text() + latestWords(section));
  }

  private Rule probe(Section section, Reach reach) {
    Probe probe = named(section.required("probe"));
    Optional<Entry> falls = section.optional("falls-to");
    if (falls.isPresent() == section.has("reaches")) {
      throw section.place().error("either reaches or falls-to");
    }
    String name = section.required("probe").text();
    if (falls.isPresent()) {
      double target = falling(falls.get(), reach);
      return new Rule(
          new StageEnd.Falls(probe, target, latest(section)),
          name + " falls to " + falls.get().text() + latestWords(section));
    }
    Entry entry = section.required("reaches");
    double target = rising(entry, reach);
    return new Rule(
        new StageEnd.Rises(probe, target, latest(section)),
        name + " reaches " + entry.text() + latestWords(section));
  }

  private Probe named(Entry entry) {
    String name = entry.text();
    if (name.equals(Probe.CORE.name())) {
      return Probe.CORE;
    }
    if (name.equals(Probe.SURFACE.name())) {
      return Probe.SURFACE;
    }
    Probe named =
        probes.stream()
            .filter(probe -> probe.name().equals(name))
            .findFirst()
            .orElseThrow(() -> entry.error("core, surface, or a probe listed under probes"));
    if (!named.instrument().isIdeal()) {
      throw entry.error(
          "a probe without response, stem, bias or resolution, since rules wait for true"
              + " temperatures");
    }
    return named;
  }

  /**
   * Surroundings are approached, never reached: a target at their temperature can't be met either.
   */
  private static double rising(Entry entry, Reach reach) {
    double target = entry.quantity(Dimension.TEMPERATURE, 233.15, 773.15);
    if (!(target < reach.hottest())) {
      throw entry.error(
          "a temperature below "
              + Dimension.TEMPERATURE.text(reach.hottest())
              + ", the hottest that the cut meets up to here");
    }
    return target;
  }

  private static double falling(Entry entry, Reach reach) {
    double target = entry.quantity(Dimension.TEMPERATURE, 233.15, 773.15);
    if (!(target > reach.coldest())) {
      throw entry.error(
          "a temperature above "
              + Dimension.TEMPERATURE.text(reach.coldest())
              + ", the coldest that the cut meets up to here");
    }
    return target;
  }

  private static double latest(Section section) {
    return section.quantity("at-latest", Dimension.TIME, 1, StageEnd.LONGEST);
  }

  private static String latestWords(Section section) {
    return ", at latest after " + section.required("at-latest").text();
  }

  private static void refuse(Section section, String kind, String... keys) {
    for (String key : keys) {
      section
          .optional(key)
          .ifPresent(
              entry -> {
                throw entry.error("no " + key + " beside " + kind);
              });
    }
  }
}
