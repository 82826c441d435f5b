/**
 * The rules that keep the code's layers apart, and the proof that each rule can fail.
 *
 * <p>{@code Rows} says which package may use which; read it first. {@code Rules} lists every rule on compiled classes,
 * {@code Bans} the library calls that nobody may make, {@code SourceRules} what only the source text shows. {@code
 * RulesTest} holds the project to them; {@code RulesTwinTest} runs the same rules on the small wrong classes below
 * {@code wrong} and demands that each is caught by name.
 */
package org.spile.samples.layers;
