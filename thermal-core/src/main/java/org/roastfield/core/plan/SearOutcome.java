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
 * @param crust of the paler face, where it touches metal if a part of it does: that part as if no
 *     heat went along the face, which makes it as brown as it can get
 * @param average the same of the face as it is computed, all of it one; browning bends upwards with
 *     temperature, so that the mean of its parts is browner
 * @param early whether a pull is early enough
 */
public record SearOutcome(
    SearSchedule schedule,
    double reading,
    double finalCore,
    double grey,
    double within,
    Browning crust,
    Browning average,
    boolean early) {}
