/**
 * How much live foliage a tree can lose in one visit: each way of taking it, in each season, before
 * each threshold is passed in a stated share of futures. Plays, searches and counts; pages and
 * tables of it are made elsewhere.
 */
package longbough.runner.limit;
