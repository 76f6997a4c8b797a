// Package draft is the harness as far as it is read: what the rows add to and the joins
// finish.
//
// Its words:
//
//   - importer: one import on its way, with its options, its report and the harness.
//   - term: a termination on its way, with the state of each cavity.
//   - item: what one row says of one cavity or one wire.
//   - end: one end of an item: a cavity, a splice, or none yet.
//   - group: the wires of one cable on their way to a unit.
//
// It holds and finds; it decides nothing about what a list means.
package draft
