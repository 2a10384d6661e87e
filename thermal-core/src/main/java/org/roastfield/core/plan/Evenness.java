package org.roastfield.core.plan;

/**
 * How evenly a cook comes out at the middle of the beliefs, taken off the gentle heat where the
 * final core is as wished.
 *
 * @param grey largest depth from a face that is hotter than the wish at some time [m]
 * @param within share of the volume whose highest temperature is within 2.5 K of the wish, in [0,
 *     1]
 * @param pull when it is off the gentle heat, since the start of the cook [s]; infinite for one
 *     that does not get to its end
 * @param early whether a pull is early enough, and the cook gets to its end
 */
public record Evenness(double grey, double within, double pull, boolean early) {}
