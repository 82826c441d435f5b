/** Every sample house from end to end: what is found in it, and whether its sheets can be read. */
package org.spile.samples.houses;
