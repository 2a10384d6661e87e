package org.roastfield.lab.intake;

import org.roastfield.lab.files.LogUnit;

/**
 * Where a channel's readings stand.
 *
 * @param channel name in the package
 * @param column of the readings, from 0
 * @param unit of a reading that does not say its own
 * @param probe what the column of names must say in a long log; empty in a wide one
 */
public record ChannelRule(String channel, int column, LogUnit unit, String probe) {}
