// Package value reads the values in a cell of a list: the size and make of a wire, colours,
// currents, lengths, numbers.
//
// Its words:
//
//   - gauge: what a cell says of a wire or a cable: size, specification, conductors, shield.
//   - hue: one colour of a wire, with its shade; a Colour is the base and its stripes.
//   - mark: the sign that parts whole numbers from decimals in a list, "." or ",".
//   - bare: how a number without a unit is read.
//   - token: a run of digits, of letters, or one sign of a text.
//
// What is no value of its kind gives false, and nothing is guessed. Each value prints so
// that it reads back as itself.
//
// It knows nothing of columns, rows or connectors, and it does not say what is done with a
// cell that it does not read.
package value
