package org.roastfield.lab.files;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.chamber.Draught;
import org.roastfield.core.chamber.Lid;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.surface.Wrap;

/** Reads wraps, openings of the lid, and the draught of a fire. */
final class CoverReader {

  private static final List<Wrap> WRAPS = List.of(Wrap.FOIL, Wrap.PAPER, Wrap.TENT);

  /** Humidity ratio outside where a file states none: a mild day; assumed. */
  private static final double OUTSIDE = 0.008;

  private final LocalDateTime starts;
  private final CutSetup cut;

  CoverReader(LocalDateTime starts, CutSetup cut) {
    this.starts = starts;
    this.cut = cut;
  }

  /** Wrap of a stage. */
  Optional<Wrap> wrap(Section stage) {
    return stage.optional("wrap").map(CoverReader::wrap);
  }

  private static Wrap wrap(Entry entry) {
    String word = entry.text();
    List<String> words = WRAPS.stream().map(Wrap::name).toList();
    return WRAPS.stream()
        .filter(wrap -> wrap.name().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                entry.error(
                    "one of "
                        + String.join(", ", words)
                        + Spelling.nearest(word, words)
                            .map(near -> "; nearest known: " + near)
                            .orElse("")));
  }

  /** Lid of a stage whose walls are as warm as given [K]. */
  Optional<LidSetup> lid(Section stage, double walls) {
    return stage.optional("lid").map(entry -> lid(entry, walls));
  }

  private LidSetup lid(Entry entry, double walls) {
    Section section = entry.section("open-air", "open-walls", "open-humidity-ratio", "openings");
    List<Lid.Opening> openings = new ArrayList<>();
    Entry list = section.required("openings");
    for (Entry item : list.items()) {
      openings.add(opening(item.section("at", "for")));
    }
    return new LidSetup(
        list.guard(() -> new Lid(openings)),
        section.quantity("open-air", Dimension.TEMPERATURE, 233.15, 873.15),
        section
            .optional("open-walls")
            .map(e -> e.quantity(Dimension.TEMPERATURE, 233.15, 1473.15))
            .orElse(walls),
        outside(section, "open-humidity-ratio"));
  }

  private Lid.Opening opening(Section item) {
    Entry at = item.required("at");
    double time = Duration.between(starts, Clock.read(at)).toSeconds();
    if (!(time >= 0 && time <= StageEnd.LONGEST)) {
      throw at.error("a clock time not before " + starts + " and within ten days of it");
    }
    return new Lid.Opening(time, item.quantity("for", Dimension.TIME, 5, 3600));
  }

  private static double outside(Section section, String key) {
    return section
        .optional(key)
        .map(e -> e.quantity(Dimension.HUMIDITY_RATIO, 0, 0.1))
        .orElse(OUTSIDE);
  }

  /** Draught of a chamber, if stated. */
  Optional<Draught> draught(Section chamber) {
    return chamber.optional("draught").map(this::draught);
  }

  private Draught draught(Entry entry) {
    if (cut.extent().isEmpty()) {
      throw entry.error("the size of the whole cut beside a draught, such as its length");
    }
    Section section = entry.section("fuel", "burn-rate", "excess-air", "outside-humidity-ratio");
    return Draught.ofFire(
        fuel(section.required("fuel")),
        section.quantity("burn-rate", Dimension.MASS_FLOW, 1e-6, 0.1),
        section.quantity("excess-air", Dimension.SHARE, 1, 50),
        outside(section, "outside-humidity-ratio"));
  }

  private static Draught.Fuel fuel(Entry entry) {
    return switch (entry.text()) {
      case "charcoal" -> Draught.Fuel.CHARCOAL;
      case "wood" -> Draught.Fuel.WOOD;
      default -> throw entry.error("charcoal or wood");
    };
  }

  /** Load of the whole cut, both faces of a slab, on a draught. */
  double load(Draught draught) {
    return draught.load(cut.evaporatingArea().orElseThrow());
  }
}
