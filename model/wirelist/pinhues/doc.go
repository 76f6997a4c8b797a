// Package pinhues parts the cells of a column of cavities that say the colour of the wire as well, "1 (red)", "A: blue".
package pinhues
