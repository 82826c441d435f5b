/**
 * Small classes that each break one rule on purpose, laid out as the project's own packages are; {@code SoundGap} breaks
 * none. They exist to prove that the rules can fail.
 */
package org.spile.samples.layers.wrong;
