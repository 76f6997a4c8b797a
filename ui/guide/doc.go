// Package guide is what the program says about itself: one short page for each step
// of the bench and for each thing that is asked about. The bench shows a page on one
// screen, the command prints it.
//
// A page is paragraphs of plain text; a line that begins with a blank stands as it
// is. Pages know no keys but those that the text is about; the key table is the
// bench's own.
package guide
