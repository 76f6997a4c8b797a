// Package columned parts texts whose columns stand under each other, with no sign between the cells: a line into its cells, and a
// text into its columns, by the line that names them and the rule below it.
//
// It makes no table; package table does.
package columned
