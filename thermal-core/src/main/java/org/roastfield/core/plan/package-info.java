/**
 * Plans of cooks, backwards from the table: when to put a cut on, at what reading to take it off
 * the gentle heat, how to sear it, and the chances that come with it. The core's last word before a
 * cook begins.
 */
@NullMarked
package org.roastfield.core.plan;

import org.jspecify.annotations.NullMarked;
