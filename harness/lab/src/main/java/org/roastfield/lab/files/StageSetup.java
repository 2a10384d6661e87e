package org.roastfield.lab.files;

import java.util.List;

/**
 * A stage as the cook file states it. A stage with turns stands for several stages of the core's
 * cook, one for each time the cut lies still.
 *
 * @param name as written
 * @param upper surroundings of the surface; in a slab, of the upper face
 * @param lower surroundings of a slab's lower face; equal to {@code upper} for other shapes
 * @param free surroundings of a face that is turned away from the grate, where the stage has turns;
 *     else equal to {@code upper}
 * @param firstStage index of its first stage in {@code cook().stages()}
 * @param stageCount how many of those stages it stands for, at least 1
 * @param end rule that ends it, in words
 * @param facts statements for display
 */
public record StageSetup(
    String name,
    FaceSetup upper,
    FaceSetup lower,
    FaceSetup free,
    int firstStage,
    int stageCount,
    String end,
    List<Fact> facts) {

  /** Copies the list. */
  public StageSetup {
    facts = List.copyOf(facts);
  }

  /** Index of its last stage in {@code cook().stages()}. */
  public int lastStage() {
    return firstStage + stageCount - 1;
  }
}
