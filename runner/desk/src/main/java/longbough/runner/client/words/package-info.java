/**
 * The words of the client report: one file of messages, of which the user may bring a translation
 * that replaces some or all. No other class of the report holds a sentence.
 */
package longbough.runner.client.words;
