package org.roastfield.core.plan;

import org.roastfield.core.outcome.Browning;

/**
 * What a sear does to the cut at the middle of the beliefs, taken off the gentle heat where the
 * final core is as wished.
 *
 * @param schedule of the sear
 * @param reading of an ideal probe in the core at the pull [K]
 * @param finalCore highest core up to carving [K]; above the wish where no pull is early enough
 * @param grey largest depth from a face that is hotter than the wish at some time [m]
 * @param within share of the volume whose highest temperature is within 2.5 K of the wish, in [0,
 *     1]
 * @param crust of the paler face
 * @param early whether a pull is early enough
 */
public record SearOutcome(
    SearSchedule schedule,
    double reading,
    double finalCore,
    double grey,
    double within,
    Browning crust,
    boolean early) {}
