/**
 * Sets a page of ours on paper: a tagged PDF for readers with and without sight (PDF/UA-1), the
 * same bytes each time. Nothing outside this package needs the PDF libraries, so that no other
 * command waits for them to load.
 */
package longbough.runner.client.paper;
