package org.roastfield.lab.files;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.chamber.Lid;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.surface.Wrap;

/** Reads wraps and openings of the lid. */
final class CoverReader {

  private static final List<Wrap> WRAPS = List.of(Wrap.FOIL, Wrap.PAPER, Wrap.TENT);

  private final LocalDateTime starts;

  CoverReader(LocalDateTime starts) {
    this.starts = starts;
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
        DraughtReader.outside(section, "open-humidity-ratio"));
  }

  private Lid.Opening opening(Section item) {
    Entry at = item.required("at");
    double time = Duration.between(starts, Clock.read(at)).toSeconds();
    if (!(time >= 0 && time <= StageEnd.LONGEST)) {
      throw at.error("a clock time not before " + starts + " and within ten days of it");
    }
    return new Lid.Opening(time, item.quantity("for", Dimension.TIME, 5, 3600));
  }
}
