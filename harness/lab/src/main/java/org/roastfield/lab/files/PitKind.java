package org.roastfield.lab.files;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.chamber.FirePit;

/** Pits by what they are made of. */
public enum PitKind {
  /** Thin steel. */
  THIN_STEEL(0.4),
  /** Brick and steel. */
  BRICK_AND_STEEL(1),
  /** Ceramic. */
  CERAMIC(0.6);

  private final double glowing;

  PitKind(double glowing) {
    this.glowing = glowing;
  }

  /** Kind of a word, such as thin-steel. */
  public static Optional<PitKind> of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }

  /** All words. */
  public static List<String> words() {
    return Arrays.stream(values()).map(PitKind::word).toList();
  }

  /** Word in files and on screens. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Coals that glow when they go in, if nothing else is said [kg]; assumed. */
  public double glowing() {
    return glowing;
  }

  /** The assumed pit of this kind. */
  public FirePit pit() {
    return switch (this) {
      case THIN_STEEL -> FirePit.thinSteel();
      case BRICK_AND_STEEL -> FirePit.brickAndSteel();
      case CERAMIC -> FirePit.ceramic();
    };
  }
}
