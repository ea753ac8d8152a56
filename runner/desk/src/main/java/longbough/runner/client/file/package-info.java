/**
 * The client file: who asked, who answers, their logo and their own words. Read as strictly as a
 * scenario; a logo is decoded and written anew, so that nothing but its picture gets into a report.
 */
package longbough.runner.client.file;
