// Package column looks at the cells of one column of a table, whatever its heading is: how many are colours, sizes, cavities,
// ends, words. What the column means it does not say; package settle does.
package column
