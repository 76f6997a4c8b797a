// Package doubt says what speaks against a reading of a table: what of it is left unread, or could be something else, so
// that its wires could be wrong. It looks at the cells and at what each column is taken for; which reading is taken
// package reading says, and what a whole harness lacks of its lists package audit.
package doubt
