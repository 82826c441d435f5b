/** Programs that measure, started by hand; see {@code docs/performance.md}. */
package org.spile.samples.speed;
