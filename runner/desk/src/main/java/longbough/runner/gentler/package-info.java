/**
 * What a plan does to a tree and how far it gives the client what was asked for, over the same
 * futures for every plan. Plays and counts; plans are made and searched in {@code search}, shown in
 * {@code page}.
 */
package longbough.runner.gentler;
