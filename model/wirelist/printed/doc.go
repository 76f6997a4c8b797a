// Package printed makes a plain table again of one that a script printed from a sheet. A script has a word for a cell that
// holds nothing, numbers the rows in a column of its own, and no two of its headings are alike.
//
//	|   | From  | Pin | To   | Pin.1 | Colour |
//	| 0 | Box A | 1.0 | Horn | A     | red    |
//	| 1 | nan   | 2.0 | Horn | B     | nan    |
//
// It empties cells and writes headings as they stood in the sheet; it says each time which rows it did so in. What a column means it
// does not ask.
package printed
