// Package name reads the names in a list: headings, connectors, cavities, splices, studs,
// cables, the words that say a place is free, the titles above a table.
//
// Its words:
//
//   - designator: the short name of a connector, "P7".
//   - end: a connector and a cavity as a cell writes them, "P7:3".
//   - spread: to read "A1-A4" as the four cavities it means.
//   - stud: a bolt that several wires are taken to; it has no cavities.
//   - state: what a cavity is for: used, spare, reserved, blank.
//   - field: what a column means; the vocabulary gives the field of each known heading.
//   - recipe: what a person said that the columns of a list mean.
//
// The words are those of builders' lists in English, German, French, Spanish and Italian;
// common practice, no source.
//
// It looks at one text at a time, or at the rows of one title. What several rows say
// together is found by the packages shape and join.
package name
