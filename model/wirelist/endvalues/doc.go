// Package endvalues parts the size of a wire, and its colour beside that, from the end that they stand behind in one cell.
//
// It looks at the columns of ends alone. A cell whose row says the value in its own column stays as it is.
package endvalues
