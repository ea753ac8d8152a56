/**
 * Type on pictures: the fonts shipped with the program, how wide a text is in them, and names
 * broken or cut to the room there is. Whatever letters a name holds, it stays within its room.
 */
package longbough.runner.type;
