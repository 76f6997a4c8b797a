// Package reading says what a block of a list is: every plausible reading is tried, scored by what it
// explains, and the best is taken. The one that came next is kept.
//
// Its words:
//
//   - reading: a block, what each of its columns means, its score, and the evidence.
//   - profile: what the cells of one column are, whatever its heading says.
//   - kind: what a reading takes the block for: the cavities of one connector, both ends in a row, a
//     list of parts; each kind has a file of its own, with an example above it.
//   - wires: whether rows of the kind are wires. Only those of such a block become any.
//
// A meaning comes from the heading and from the cells: a column of sizes holds sizes, a cavity hardly
// comes twice. What a person said of a column holds in every reading.
//
// It reads no value into a wire and makes no finding; packages row and wirelist do.
package reading
