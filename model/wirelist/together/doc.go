// Package together gives the columns of a plain table their meanings all at once, so that each heading says something and no two of them
// contradict each other.
//
// Its words:
//
//   - plain table: every column with something in it has a heading, and no person said what one means.
//   - place: where a wire ends: a column of devices and the one of their cavities, cavities below a heading that names their device, or
//     one of these columns alone.
//   - near place: the one that the rows are counted by; the far place is where their wires go.
//
// Rules that look at one column after the other can leave a column over that only the others explain. Here every place is looked for
// first, and what is left over is a value of the wire. A table that does not come out whole is left to the other readings.
package together
