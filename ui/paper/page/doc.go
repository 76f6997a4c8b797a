// Package page sets the pages of a printed set: it lays blocks whose heights are known into
// pages of one live area that both A4 and Letter hold, so that the program, and not a browser,
// knows what stands on which page, how many pages there are, and what the contents list says.
//
// Its words:
//
//   - block: a heading, a text, a table, a picture. It has a height in mm, and says whether it may be
//     cut, whether it begins a page, and whether it stays with the next one.
//   - section: a named part of the set, with an entry in its contents. Some have parts of their own:
//     the lay cards of the branches.
//   - letter: a size of type. None is smaller than 9 points.
//   - grid: a table whose rows are as high as their lines need; it is cut between rows, its head is
//     repeated, and it may stand in columns side by side.
//
// Every line break is made here, by the widths of the face that goes with the page, so another face
// in the browser moves no row. The package knows no harness.
package page
