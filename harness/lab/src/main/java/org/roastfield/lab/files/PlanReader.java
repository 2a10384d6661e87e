package org.roastfield.lab.files;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.shape.Shape;

/** Reads what a cook file says for planning. */
final class PlanReader {

  private static final String[] KEYS = {
    "zone",
    "earliest",
    "latest",
    "carving",
    "on-time",
    "core",
    "minimum",
    "loss",
    "window",
    "rest-at-least",
    "rest-at-most",
    "hold-minimum",
    "fire-ready",
    "fire-cooler",
    "fire-hotter",
    "pit",
    "across",
    "people",
    "portion",
    "trim",
    "bone",
    "salt"
  };

  private static final String KEPT = "kept";
  private static final List<String> WINDOWS = List.of(KEPT, "wished");

  /** A cut is off the heat for at least so long before it is carved [s]. */
  private static final double LEAST_REST = 60;

  /** What codes ask of hot food lies well within these [K]. */
  private static final double LEAST_HELD = 313.15;

  private static final double MOST_HELD = 363.15;

  /** A fire that is changed by more is another fire [K]; assumed. */
  private static final double MOST_CHANGE = 80;

  private final Section section;
  private final Optional<LocalDateTime> serves;
  private final Shape shape;
  private final boolean tapers;

  private PlanReader(Section section, Optional<LocalDateTime> serves, Shape shape, boolean tapers) {
    this.section = section;
    this.serves = serves;
    this.shape = shape;
    this.tapers = tapers;
  }

  /**
   * Wishes of a section.
   *
   * @param serves when the file says that the cut is served
   * @param doneness whether doneness is wished, beside which no core is
   * @param tapers whether the cut is a taper
   */
  static PlanWishes read(
      Entry entry,
      Optional<LocalDateTime> serves,
      boolean doneness,
      Shape shape,
      boolean tapers,
      List<Fact> facts) {
    PlanReader reader = new PlanReader(entry.section(KEYS), serves, shape, tapers);
    PlanWishes wishes = reader.wishes(doneness);
    entry.collect("plan", facts);
    return wishes;
  }

  private PlanWishes wishes(boolean doneness) {
    Optional<Entry> core = section.optional("core");
    if (core.isPresent() && doneness) {
      throw core.get().error("no core beside a wish for doneness, which says it already");
    }
    OptionalDouble least = time("rest-at-least", LEAST_REST);
    OptionalDouble most = time("rest-at-most", LEAST_REST);
    if (least.isPresent() && most.isPresent() && !(most.getAsDouble() >= least.getAsDouble())) {
      throw section.required("rest-at-most").error("no shorter a time than rest-at-least");
    }
    return new PlanWishes(
        section.optional("zone").map(PlanReader::zone),
        clock("earliest"),
        clock("latest"),
        time("carving", 0),
        share("on-time", 0.5, 0.99),
        core.map(e -> OptionalDouble.of(temperature(e))).orElse(OptionalDouble.empty()),
        section.optional("minimum").map(PlanReader::minimum),
        section.optional("loss").map(PlanReader::loss),
        kept(),
        least,
        most,
        number("hold-minimum", Dimension.TEMPERATURE, LEAST_HELD, MOST_HELD),
        time("fire-ready", 60),
        number("fire-cooler", Dimension.TEMPERATURE_DIFFERENCE, 0, MOST_CHANGE),
        number("fire-hotter", Dimension.TEMPERATURE_DIFFERENCE, 0, MOST_CHANGE),
        section.optional("pit").map(PlanReader::pit),
        across(),
        plates(),
        section.optional("salt").map(this::salt));
  }

  /** A zone by the name of its region, with the days on which its clocks change. */
  static ZoneId zone(Entry entry) {
    String name = entry.text();
    if (!ZoneId.getAvailableZoneIds().contains(name) || !name.matches("UTC|\\w+/[\\w+/-]+")) {
      throw entry.error("a time zone by region and city, such as Europe/Stockholm, or UTC");
    }
    return ZoneId.of(name);
  }

  private Optional<LocalDateTime> clock(String key) {
    Optional<Entry> entry = section.optional(key);
    if (entry.isEmpty()) {
      return Optional.empty();
    }
    if (serves.isEmpty()) {
      throw entry.get().error("serves at the top of the file beside " + key);
    }
    LocalDateTime clock = Clock.read(entry.get());
    boolean early = key.equals("earliest");
    LocalDateTime table = serves.get();
    if (early ? clock.isAfter(table) : clock.isBefore(table)) {
      throw entry.get().error((early ? "no later" : "no earlier") + " than serves, " + table);
    }
    LocalDateTime limit = early ? table.minusHours(12) : table.plusHours(12);
    if (early ? clock.isBefore(limit) : clock.isAfter(limit)) {
      throw entry.get().error("a time within 12 hours of serves, " + table);
    }
    return Optional.of(clock);
  }

  private OptionalDouble time(String key, double low) {
    return number(key, Dimension.TIME, low, StageEnd.LONGEST);
  }

  private OptionalDouble share(String key, double low, double high) {
    return number(key, Dimension.SHARE, low, high);
  }

  private OptionalDouble number(String key, Dimension dimension, double low, double high) {
    return number(section, key, dimension, low, high);
  }

  private static OptionalDouble number(
      Section section, String key, Dimension dimension, double low, double high) {
    return section.has(key)
        ? OptionalDouble.of(section.quantity(key, dimension, low, high))
        : OptionalDouble.empty();
  }

  private static double temperature(Entry entry) {
    return entry.quantity(Dimension.TEMPERATURE, 283.15, 373.15);
  }

  private static PlanWishes.Minimum minimum(Entry entry) {
    Section section = entry.section("core", "chance");
    return new PlanWishes.Minimum(
        temperature(section.required("core")),
        section.quantity("chance", Dimension.SHARE, 0.5, 0.99));
  }

  private static PlanWishes.Loss loss(Entry entry) {
    Section section = entry.section("short", "beyond", "missed");
    return new PlanWishes.Loss(
        section.quantity("short", Dimension.RATIO, 0.01, 100),
        section.quantity("beyond", Dimension.RATIO, 0.01, 100),
        number(section, "missed", Dimension.TEMPERATURE_DIFFERENCE, 0.1, 50));
  }

  /** Whether the window is kept, which no cut is that has to get to a minimum first. */
  private boolean kept() {
    Optional<Entry> entry = section.optional("window");
    if (entry.isEmpty()) {
      return false;
    }
    String word = entry.get().text();
    if (!WINDOWS.contains(word)) {
      throw entry.get().error(Spelling.oneOf(WINDOWS, word));
    }
    boolean kept = word.equals(KEPT);
    if (kept && section.has("minimum")) {
      throw entry.get().error("no window: kept beside a minimum, which may take longer");
    }
    return kept;
  }

  private OptionalDouble across() {
    OptionalDouble kelvin = number("across", Dimension.TEMPERATURE_DIFFERENCE, 1, 60);
    if (kelvin.isPresent() && !tapers) {
      throw section.required("across").error("it beside a taper, which can lie two ways");
    }
    return kelvin;
  }

  private static PlanWishes.Pit pit(Entry entry) {
    Section pit = entry.section("like", "outside");
    Entry like = pit.required("like");
    return new PlanWishes.Pit(
        PitKind.of(like.text())
            .orElseThrow(() -> like.error(Spelling.oneOf(PitKind.words(), like.text()))),
        number(pit, "outside", Dimension.TEMPERATURE, 243.15, 323.15));
  }

  private Optional<PlanWishes.Plates> plates() {
    if (!section.has("people")) {
      for (String key : List.of("portion", "trim", "bone")) {
        section
            .optional(key)
            .ifPresent(
                unused -> {
                  throw section.missing("people", "it beside " + key);
                });
      }
      return Optional.empty();
    }
    return Optional.of(
        new PlanWishes.Plates(
            section.required("people").wholeNumber(1, 10_000),
            number("portion", Dimension.MASS, 0.01, 5),
            share("trim", 0, 0.6),
            share("bone", 0, 0.6)));
  }

  private PlanWishes.Salt salt(Entry entry) {
    Section salt = entry.section("share", "depth");
    double share = salt.quantity("share", Dimension.SHARE, 0.001, 0.05);
    OptionalDouble depth = number(salt, "depth", Dimension.LENGTH, 0.001, shape.halfThickness());
    return new PlanWishes.Salt(share, depth);
  }
}
