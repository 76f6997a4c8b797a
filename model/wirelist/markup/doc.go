// Package markup finds the tables in texts that are written to be shown: those of wikis, of AsciiDoc, of reStructuredText, of outlines
// and of HTML. Each becomes rows of cells, each cell one text, with the line that its first cell stands on.
//
// Words. A drawn row is a row as the language has it, a cell of it over one column or several and over one row or several. A spread
// table has a cell in each column of each row: one over several rows stands in each of them, one over several columns in the first.
// Headings in several rows become one row, those over several columns before each of what stands below them.
//
// What it does not do: it knows no word that a list uses. What is no table stays text, with the signs of its headings as Markdown has
// them.
package markup
