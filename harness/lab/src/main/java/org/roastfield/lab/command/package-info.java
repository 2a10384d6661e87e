/**
 * The command line: {@code simulate}, {@code replay}, {@code fit}, {@code take-in}, {@code
 * make-log} and {@code make-data}. Exit codes: 0 done, 1 the computation failed or made other data
 * than the checksums say, 2 bad usage or input.
 */
@NullMarked
package org.roastfield.lab.command;

import org.jspecify.annotations.NullMarked;
