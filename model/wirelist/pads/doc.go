// Package pads reads what headings and cells say of the pads of boards and modules: which device a column is of, by what its pads are
// called, their number and name in one cell.
//
// It gives no column its meaning; package settle does.
package pads
