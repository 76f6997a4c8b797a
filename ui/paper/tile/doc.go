// Package tile cuts a drawing into the pages of a printer: sheets of A4, A3 or Letter that are glued
// together, or lengths of a roll. Every page has a bar of 100 mm along both of its sides, so that a
// person sees with a rule whether the printer kept the size.
//
// Its words:
//
//   - live: the part of a page that shows the drawing; round it is a margin.
//   - overlap: the strip that two pages that lie side by side both show, 10 mm wide. A cross lies
//     in the middle of it at every corner, and a diamond between them: two pages lie right when
//     both lie on each other.
//   - cell: a page of the drawing by its column, a letter, and its row, a number; A1 is at the top
//     left.
//   - key plan: the drawing in small, with its cells.
package tile
