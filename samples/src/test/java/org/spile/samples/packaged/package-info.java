/** The one runnable jar, as a user gets it: what it holds, and that it starts. */
package org.spile.samples.packaged;
