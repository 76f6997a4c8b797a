// Package markup reads the HTML that stands in Markdown: a table as rows of cells, a line without its tags.
//
// It knows the few tags that tables are made of. Every other tag is left out and its text kept. No link is followed, nothing
// but text comes out.
//
// What it does not do: it does not know what a cell means, and it settles no odd characters; package table does that.
package markup
