/**
 * What logs tell of a cooker and what they cannot, in words, and what is likely to be wrong where a
 * log and its cook file do not go together.
 */
@NullMarked
package org.roastfield.lab.diagnosis;

import org.jspecify.annotations.NullMarked;
